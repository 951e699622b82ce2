namespace Cablewright.Service.Tests.Drawings;

/// <summary>
/// Keeps what is drawn to be looked at: where <c>CABLEWRIGHT_PICTURES</c> names a folder, every picture is written there.
/// </summary>
internal static class Pictures
{
    private static readonly string? Folder = Environment.GetEnvironmentVariable("CABLEWRIGHT_PICTURES");

    public static async Task Keep(string name, string content)
    {
        if (Folder is null) return;
        Directory.CreateDirectory(Folder);
        await File.WriteAllTextAsync(Path.Combine(Folder, name), content);
    }
}
