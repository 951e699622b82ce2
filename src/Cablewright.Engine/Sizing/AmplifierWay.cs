namespace Cablewright.Engine.Sizing;

/// <summary>The certain way of one amplifier's current in a <see cref="Relaxation"/>.</summary>
/// <param name="Load">The amplifier.</param>
/// <param name="Private">The open runs that carry this amplifier's current and no other.</param>
/// <param name="SharedAt">Which of the runs to branch on lie on the way.</param>
/// <param name="Fixed">The branches of the way whose conductors are given.</param>
internal sealed record AmplifierWay(int Load, int[] Private, int[] SharedAt, int[] Fixed);
