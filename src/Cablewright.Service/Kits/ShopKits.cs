using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Cablewright.Contract;
using Cablewright.Contract.Kits;
using Cablewright.Service.Validation;
using Cablewright.Storage.Kits;

namespace Cablewright.Service.Kits;

/// <summary>
/// Reads kept kits, each once and only when it is asked for: reading ten thousand takes longer than judging them. Members
/// that a later release wrote are skipped; strict is only what callers send. A kit that damage or a later release made
/// unreadable is told in the log once, and stands in no other's way.
/// </summary>
internal sealed partial class ShopKits(ILogger<ShopKits> log)
{
    private static readonly JsonTypeInfo<Kit> Lenient = (JsonTypeInfo<Kit>)new JsonSerializerOptions(ContractJson.Default.Options)
    {
        TypeInfoResolver = ContractJson.Default.WithAddedModifier(
            shape =>
            {
                if (shape.Kind == JsonTypeInfoKind.Object) shape.UnmappedMemberHandling = JsonUnmappedMemberHandling.Skip;
            }),
    }.GetTypeInfo(typeof(Kit));

    private readonly ConditionalWeakTable<StoredKit, Reading> readings = [];

    /// <summary>The kit as the engine sees it; <c>null</c> where it cannot be read.</summary>
    public Engine.Kits.Kit? Read(StoredKit kept)
    {
        if (readings.TryGetValue(kept, out Reading? known)) return known.Kit;
        var reading = new Reading(Parse(kept));
        if (readings.TryAdd(kept, reading) && reading.Kit is null) LogUnreadable(log, kept.Tag);
        return reading.Kit;
    }

    /// <summary>
    /// Quantities out of range would be read as placeholders, so that what the edge would refuse is not judged.
    /// </summary>
    private static Engine.Kits.Kit? Parse(StoredKit kept)
    {
        if (!kept.IsSound) return null;
        try
        {
            Kit? kit = JsonSerializer.Deserialize(kept.Body.Span, Lenient);
            return kit is null || Validators.FaultsOf(kit).Count > 0 ? null : KitMapping.ToEngine(kit with { Sku = kept.Sku });
        }
        catch (JsonException)
        {
            return null;
        }
    }

    [LoggerMessage(
        LogLevel.Error, "A kept kit cannot be read: it was damaged, or a later release wrote it; its row has the tag {Tag}")]
    private static partial void LogUnreadable(ILogger log, string tag);

    private sealed record Reading(Engine.Kits.Kit? Kit);
}
