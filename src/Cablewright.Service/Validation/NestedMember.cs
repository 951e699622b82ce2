using System.Collections;
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

    /// <summary>Everything wrong with what an owner holds here, each fault with its place in the owner.</summary>
    public IEnumerable<Fault> FaultsIn(object owner) => valueIn(owner) switch
    {
        null => [],
        IEnumerable items => items.OfType<object>().SelectMany((item, index) => Faults(item, $"{pointer}/{index}")),
        object one => Faults(one, pointer),
    };

    private IEnumerable<Fault> Faults(object instance, string place) =>
        validator.FaultsOf(instance).Select(fault => fault.Below(place));
}
