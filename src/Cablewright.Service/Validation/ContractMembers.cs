using System.Text.Json.Serialization.Metadata;
using Cablewright.Service.Answers;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Validation;

/// <summary>
/// Checks a contract type by its members: what their attributes state (ranges, lengths, counts, ids, sizes), and whatever stands
/// in them, by the validator of its type.
/// </summary>
internal sealed class ContractMembers : IContractValidator
{
    private readonly MemberRule[] stated;
    private readonly NestedMember[] nested;

    public ContractMembers(Type type)
    {
        IList<JsonPropertyInfo> members = AnswerJson.Shapes.GetTypeInfo(type)!.Properties;
        stated = [.. members.SelectMany(MemberRules.Of)];
        nested = [.. members.Select(NestedMember.Of).OfType<NestedMember>()];
    }

    /// <inheritdoc/>
    public bool IsCheckedWhereNested => true;

    /// <inheritdoc/>
    public IReadOnlyList<Fault> FaultsOf(object instance)
    {
        List<Fault> faults = [];
        AddStatedFaults(instance, faults);
        AddNestedFaults(instance, faults);
        return faults;
    }

    /// <summary>Adds what is wrong by the attributes of its members.</summary>
    public void AddStatedFaults(object instance, List<Fault> faults)
    {
        foreach (MemberRule rule in stated) rule.AddFaults(instance, faults);
    }

    /// <summary>Adds what is wrong with whatever stands in it.</summary>
    public void AddNestedFaults(object instance, List<Fault> faults)
    {
        foreach (NestedMember member in nested) member.AddFaults(instance, faults);
    }
}
