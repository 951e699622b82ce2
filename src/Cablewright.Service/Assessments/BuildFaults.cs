using Cablewright.Contract.Builds;
using Cablewright.Reports.Faults;
using Cablewright.Service.Problems;
using Cablewright.Service.Validation;

namespace Cablewright.Service.Assessments;

/// <summary>Every fault of a build's content.</summary>
internal static class BuildFaults
{
    /// <summary>
    /// What is wrong with what the build says, then what is wrong with its circuit, all at once; of a place whose own text is
    /// faulty nothing more is said.
    /// </summary>
    /// <param name="stated">The build as sent.</param>
    /// <param name="mapped">The same for the engine, with placeholders where a value cannot be read.</param>
    /// <param name="hasKey">Whether the caller showed a shop's valid key.</param>
    public static IReadOnlyList<Fault> Of(Build stated, Engine.Builds.Build mapped, bool hasKey)
    {
        Fault[] content = [.. Validators.FaultsOf(stated), .. hasKey ? [] : KeylessLimits.FaultsOf(stated)];
        return
        [
            .. content,
            .. BuildFaultWriter.Find(mapped)
                .Where(fault => !content.Any(known => known.Pointer == fault.Pointer))
                .Select(fault => new Fault(fault.Pointer, fault.Code, fault.Detail, null, fault.Accepted)
                {
                    Params = fault.Params,
                }),
        ];
    }
}
