using System.Collections.Frozen;
using Cablewright.Engine.Answers;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Conductors.Audit;
using Cablewright.Engine.Findings;
using Cablewright.Engine.Kits;
using Cablewright.Engine.Protection;

namespace Cablewright.Engine;

/// <summary>The words that requests, answers and data files use for the members of the engine's enumerations.</summary>
public static class TradeWords
{
    private static readonly FrozenDictionary<Enum, string> Words = new Dictionary<Enum, string>
    {
        [UnitSystem.Us] = "us",
        [UnitSystem.Metric] = "metric",
        [Side.Supply] = "supply",
        [Side.Return] = "return",
        [Route.EngineBay] = "engine-bay",
        [Route.Cabin] = "cabin",
        [Route.Underbody] = "underbody",
        [Route.Loom] = "loom",
        [Chemistry.Flooded] = "flooded",
        [Chemistry.Agm] = "agm",
        [Chemistry.Gel] = "gel",
        [Chemistry.LiFePo4] = "lifepo4",
        [IsolatorKind.Relay] = "relay",
        [IsolatorKind.Diode] = "diode",
        [IsolatorKind.DcDcCharger] = "dc-dc-charger",
        [SupplyCaseName.AtSpeed] = "at-speed",
        [SupplyCaseName.Idle] = "idle",
        [SupplyCaseName.EngineOff] = "engine-off",
        [Extra.Alternatives] = "alternatives",
        [Extra.Headroom] = "headroom",
        [Extra.Robustness] = "robustness",
        [AmplifierClass.A] = "A",
        [AmplifierClass.AB] = "AB",
        [AmplifierClass.B] = "B",
        [AmplifierClass.D] = "D",
        [AmplifierClass.H] = "H",
        [PowerSupply.Regulated] = "regulated",
        [PowerSupply.Unregulated] = "unregulated",
        [Programme.Sine] = "sine",
        [Programme.Compressed] = "compressed",
        [Programme.Dynamic] = "dynamic",
        [Material.Copper] = "copper",
        [Material.TinnedCopper] = "tinned-copper",
        [Material.CopperCladAluminium] = "copper-clad-aluminium",
        [Material.Aluminium] = "aluminium",
        [FuseFamilyName.BladeC] = "blade-c",
        [FuseFamilyName.BladeE] = "blade-e",
        [FuseFamilyName.BladeF] = "blade-f",
        [FuseFamilyName.StripSf30] = "strip-sf30",
        [FuseFamilyName.StripSf51] = "strip-sf51",
        [FuseFamilyName.Anl] = "ANL",
        [FuseFamilyName.ClassT] = "class-t",
        [FuseFamilyName.CircuitBreaker] = "circuit-breaker",
        [AuditWay.Strands] = "strands",
        [AuditWay.Resistance] = "resistance",
        [AuditWay.Mass] = "mass",
        [AuditVerdict.TrueToClaim] = "true-to-claim",
        [AuditVerdict.Undersized] = "undersized",
        [AuditVerdict.OtherMetal] = "other-metal",
        [AuditVerdict.CannotBeTold] = "cannot-be-told",
        [KitPartKind.PowerWire] = "power-wire",
        [KitPartKind.GroundWire] = "ground-wire",
        [KitPartKind.Fuse] = "fuse",
        [KitPartKind.DistributionBlock] = "distribution-block",
        [KitPartKind.TurnOnLead] = "turn-on-lead",
        [KitPartKind.SignalInterconnect] = "signal-interconnect",
        [KitPartKind.SpeakerWire] = "speaker-wire",
        [KitPartKind.RingTerminal] = "ring-terminal",
        [KitPartKind.Grommet] = "grommet",
        [KitPartKind.HeatShrink] = "heat-shrink",
        [KitPartKind.Loom] = "loom",
        [KitPartKind.Ties] = "ties",
        [KitVerdict.Serves] = "serves",
        [KitVerdict.ServesWithChange] = "serves-with-change",
        [KitVerdict.DoesNotServe] = "does-not-serve",
        [ChangeKind.Fuse] = "fuse",
        [ChangeKind.FuseDistance] = "fuse-distance",
        [ChangeKind.Conductor] = "conductor",
        [ChangeKind.Material] = "material",
        [ChangeKind.Parallel] = "parallel",
        [ChangeKind.Insulation] = "insulation",
        [ChangeKind.Isolator] = "isolator",
        [ChangeKind.Battery] = "battery",
        [ChangeKind.Choice] = "choice",
        [ChangeKind.Length] = "length",
        [ChangeKind.Power] = "power",
        [ChangeKind.Combination] = "combination",
        [Severity.Info] = "info",
        [Severity.Caution] = "caution",
        [Severity.Fail] = "fail",
        [Verdict.Pass] = "pass",
        [Verdict.Caution] = "caution",
        [Verdict.Fail] = "fail",
    }.ToFrozenDictionary();

    /// <summary>The word for a value.</summary>
    public static string Word<T>(this T value) where T : struct, Enum => WordsOf<T>.ByValue[value];

    /// <summary>All words of one enumeration, in its order.</summary>
    public static IReadOnlyList<string> All<T>() where T : struct, Enum => [.. Enum.GetValues<T>().Select(value => value.Word())];

    /// <summary>The value for a word, exactly as written.</summary>
    public static bool TryParse<T>(string word, out T value) where T : struct, Enum
    {
        foreach (T candidate in Enum.GetValues<T>())
        {
            if (candidate.Word() != word) continue;
            value = candidate;
            return true;
        }

        value = default;
        return false;
    }

    /// <summary>The value for a word.</summary>
    /// <exception cref="ArgumentException">There is no such word.</exception>
    public static T Parse<T>(string word) where T : struct, Enum =>
        TryParse(word, out T value) ? value : throw new ArgumentException($"\"{word}\" is no {typeof(T).Name}.", nameof(word));

    /// <summary>The words of one enumeration, looked up without boxing its members.</summary>
    private static class WordsOf<T> where T : struct, Enum
    {
        public static readonly FrozenDictionary<T, string> ByValue =
            Enum.GetValues<T>().Where(value => Words.ContainsKey(value)).ToFrozenDictionary(value => value, value => Words[value]);
    }
}
