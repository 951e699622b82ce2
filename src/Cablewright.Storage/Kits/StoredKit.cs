using System.Security.Cryptography;
using System.Text.Json;
using Cablewright.Contract;
using Cablewright.Contract.Kits;

namespace Cablewright.Storage.Kits;

/// <summary>A kit as it is kept.</summary>
/// <param name="Sku">The shop's number for it.</param>
/// <param name="Kit">What it is.</param>
/// <param name="Body">The same as the JSON that is answered.</param>
/// <param name="Tag">What identifies these very bytes: their SHA-256.</param>
public sealed record StoredKit(string Sku, Kit Kit, ReadOnlyMemory<byte> Body, string Tag)
{
    internal static StoredKit Of(KitRow row) => new(
        row.Sku, JsonSerializer.Deserialize(row.Body, ContractJson.Default.Kit)!, row.Body, row.Tag!);

    /// <summary>The tag of a body.</summary>
    public static string TagOf(byte[] body) => Convert.ToHexStringLower(SHA256.HashData(body));
}
