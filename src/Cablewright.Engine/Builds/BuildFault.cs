namespace Cablewright.Engine.Builds;

/// <summary>
/// Something in a build that makes it impossible to say what it means, such as a run to a place that is not there.
/// </summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="At">Where.</param>
/// <param name="Id">The run, the amplifier, the battery or the place that it is about; <c>null</c>: none.</param>
internal sealed record BuildFault(BuildFaultKind Kind, Target At, string? Id = null)
{
    /// <summary>A stable, dotted code.</summary>
    public string Code => BuildFaultCodes.Of(Kind);

    /// <summary>What has the id already.</summary>
    public Target TakenBy { get; init; }

    /// <summary>The place that is named in vain.</summary>
    public string? Place { get; init; }

    /// <summary>The known name that was most likely meant, if any.</summary>
    public string? Nearest { get; init; }

    /// <summary>The other runs or the batteries that it is about, if any.</summary>
    public IReadOnlyList<string>? Others { get; init; }
}
