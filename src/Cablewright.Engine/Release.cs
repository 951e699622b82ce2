namespace Cablewright.Engine;

/// <summary>Which computation this is.</summary>
public static class Release
{
    /// <summary>The version of the computation; part of every answer's identity.</summary>
    public static string EngineVersion { get; } = typeof(Release).Assembly.GetName().Version!.ToString(3);
}
