using System.Globalization;
using Cablewright.Engine.Builds;
using Cablewright.Engine.Completion;

namespace Cablewright.Reports;

/// <summary>The JSON pointers (RFC 6901) of what the engine speaks of.</summary>
internal static class Pointers
{
    extension(CompleteRun run)
    {
        /// <summary>The run's JSON pointer; <c>/runs/-</c> where it was added.</summary>
        public string Pointer => Of(new Target(Part.Run, run.Index));
    }

    extension(FuseSlot slot)
    {
        /// <summary>The JSON pointer of a place for a fuse.</summary>
        public string Pointer => Of(slot.At);
    }

    extension(TerminalLimit limit)
    {
        /// <summary>The JSON pointer of what a terminal accepts.</summary>
        public string Pointer => Of(limit.At);
    }

    /// <summary>The pointer to a part or to one of its members.</summary>
    public static string Of(Target target)
    {
        string index = target.Index?.ToString(CultureInfo.InvariantCulture) ?? "-";
        string part = target.Part switch
        {
            Part.Build or Part.Bench => "",
            Part.Vehicle => "/vehicle",
            Part.Body => "/vehicle/body",
            Part.Alternator => "/vehicle/alternator",
            Part.Converter => "/vehicle/converter",
            Part.Battery => $"/vehicle/batteries/{index}",
            Part.Capacitor => $"/vehicle/capacitors/{index}",
            Part.Amplifier => $"/amplifiers/{index}",
            Part.Junction => $"/junctions/{index}",
            Part.Run => $"/runs/{index}",
            Part.Conductor => $"/runs/{index}/conductor",
            Part.Fuse => $"/runs/{index}/fuse",
            Part.FarFuse => $"/runs/{index}/farFuse",
            Part.Isolator => $"/runs/{index}/isolator",
            Part.Limits => "/limits",
            Part.Tolerances => "/tolerances",
            Part.OfferedSize => $"/sizing/sizes/{index}",
            Part.OfferedMaterial => $"/sizing/materials/{index}",
            Part.Strands => "/strands",
            Part.Resistance => "/resistance",
            Part.Mass => "/mass",
            _ => "/claim",
        };
        return target.Member is Member.Whole ? part : $"{part}/{NameOf(target.Member)}";
    }

    /// <summary>What the contract calls a member: as the engine does, but for the one name that parts share.</summary>
    public static string NameOf(Member member)
    {
        if (member is Member.OnBoardFuse) return "fuse";
        string name = member.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }
}
