using System.Text.Json.Serialization.Metadata;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Validation;

/// <summary>A member that holds an instance of another contract type, or a list of them.</summary>
/// <param name="member">The member.</param>
/// <param name="validator">Checks the instance, or each of the list.</param>
internal sealed class NestedMember(JsonPropertyInfo member, IContractValidator validator)
{
    private readonly string pointer = "/" + member.Name;
    private readonly Func<object, object?> valueIn = member.Get!;

    /// <summary>The member as such; <c>null</c> where it holds nothing that is checked along with its owner.</summary>
    public static NestedMember? Of(JsonPropertyInfo member)
    {
        JsonTypeInfo type = member.Options.GetTypeInfo(member.PropertyType);
        if (type.Kind == JsonTypeInfoKind.Enumerable) type = member.Options.GetTypeInfo(type.ElementType!);
        if (type.Kind != JsonTypeInfoKind.Object) return null;
        IContractValidator validator = Validators.Of(type.Type);
        return validator.IsCheckedWhereNested ? new(member, validator) : null;
    }

    /// <summary>Adds everything wrong with what an owner holds here, each fault with its place in the owner.</summary>
    public void AddFaults(object owner, List<Fault> faults)
    {
        object? value = valueIn(owner);
        if (value is IReadOnlyList<object?> items)
        {
            for (int i = 0; i < items.Count; i++) AddFaults(items[i], i, faults);
        }
        else
        {
            AddFaults(value, null, faults);
        }
    }

    private void AddFaults(object? instance, int? index, List<Fault> faults)
    {
        if (instance is null) return;
        foreach (Fault fault in validator.FaultsOf(instance))
            faults.Add(fault.Below(index is null ? pointer : $"{pointer}/{index}"));
    }
}
