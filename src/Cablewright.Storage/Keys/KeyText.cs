using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace Cablewright.Storage.Keys;

/// <summary>
/// The text of a key: <c>cwk_</c>, 16 hexadecimal digits that name it, <c>_</c>, and its secret, 256 random bits in base64url.
/// </summary>
internal static class KeyText
{
    private const string Prefix = "cwk_";
    private const int IdBytes = 8;
    private const int SecretBytes = 32;
    private const int IdLength = 2 * IdBytes;

    private static readonly int SecretLength = Base64Url.GetEncodedLength(SecretBytes);

    /// <summary>A new key, its id and the hash of its secret.</summary>
    public static (string Text, string Id, byte[] SecretHash) Make()
    {
        string id = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(IdBytes));
        string secret = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(SecretBytes));
        return ($"{Prefix}{id}_{secret}", id, Hash(secret));
    }

    /// <summary>The parts of a text that looks like a key.</summary>
    public static bool TryRead(string text, out string id, out string secret)
    {
        id = secret = "";
        bool looksRight = text.Length == Prefix.Length + IdLength + 1 + SecretLength
            && text.StartsWith(Prefix, StringComparison.Ordinal)
            && text[Prefix.Length + IdLength] == '_';
        if (!looksRight) return false;
        id = text.Substring(Prefix.Length, IdLength);
        secret = text[(Prefix.Length + IdLength + 1)..];
        return true;
    }

    /// <summary>
    /// A plain SHA-256: of 256 random bits nothing can be guessed, so that a slow hash would slow down only us.
    /// </summary>
    public static byte[] Hash(string secret) => SHA256.HashData(Encoding.UTF8.GetBytes(secret));
}
