using Cablewright.Engine.Builds;
using Cablewright.Engine.Conductors;
using Cablewright.Engine.Text;

namespace Cablewright.Engine.Changes;

/// <summary>One member of a build and what it is to hold.</summary>
/// <param name="At">The member; of a list to choose from, what is to be added.</param>
/// <param name="From">What it holds; <c>null</c> where it is not stated.</param>
/// <param name="To">What it is to hold; <c>null</c>: leave it out.</param>
internal sealed record Edit(Target At, Held? From, Held? To);

/// <summary>What a member of a build holds.</summary>
internal abstract record Held
{
    /// <summary>A figure as a build writes it.</summary>
    public static Held? Of(WrittenFigure? figure) => figure is { } written ? new Figure(written) : null;

    /// <summary>A word of the trade.</summary>
    public static Held? Of(Enum? word) => word is null ? null : new Word(word);

    /// <summary>A count.</summary>
    public static Held? Of(int? count) => count is { } number ? new Count(number) : null;

    /// <summary>Yes or no.</summary>
    public static Held? Of(bool? flag) => flag is { } isSo ? new Flag(isSo) : null;

    /// <summary>A conductor's size.</summary>
    public static Held Of(ConductorSize size) => new Size(size);

    internal sealed record Figure(WrittenFigure Written) : Held;

    internal sealed record Word(Enum Value) : Held;

    internal sealed record Count(int Number) : Held;

    internal sealed record Flag(bool IsSo) : Held;

    internal sealed record Size(ConductorSize Value) : Held;
}
