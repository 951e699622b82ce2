namespace Cablewright.Engine.Builds;

/// <summary>What is spoken of in what a caller states: a part, or one member of it.</summary>
/// <param name="Part">The part.</param>
/// <param name="Index">Its place among its like; <c>null</c> where there is one alone, or where it is to be added.</param>
/// <param name="Member">The member; <see cref="Member.Whole"/> for the part itself.</param>
internal readonly record struct Target(Part Part, int? Index = null, Member Member = Member.Whole)
{
    /// <summary>A member of a part of which there is one alone.</summary>
    public static Target Of(Part part, Member member) => new(part, null, member);

    /// <summary>The fuse at an end of a run.</summary>
    public static Target FuseAt(RunEnd end) => new(end.IsFar ? Part.FarFuse : Part.Fuse, end.Run);

    /// <summary>A member of the same part.</summary>
    public Target this[Member member] => this with { Member = member };
}
