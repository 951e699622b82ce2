using System.Collections.Concurrent;
using System.Collections.Frozen;
using Cablewright.Service.Problems;

namespace Cablewright.Service.Validation;

/// <summary>
/// The one validator of each contract type: the class that is written for it, wherever that is, or else what its attributes
/// state. Whatever stands in an instance is checked by these too, so that none needs to be named to be used.
/// </summary>
internal static class Validators
{
    private static readonly FrozenDictionary<Type, Type> Written = typeof(Validators).Assembly.GetTypes()
        .Where(type => type.BaseType is { IsGenericType: true } parent
            && parent.GetGenericTypeDefinition() == typeof(ContractValidator<>))
        .ToFrozenDictionary(type => type.BaseType!.GenericTypeArguments[0]);

    private static readonly ConcurrentDictionary<Type, IContractValidator> Made = new();

    /// <summary>Everything wrong with what an instance says, each fault with its place in it.</summary>
    public static IReadOnlyList<Fault> FaultsOf<T>(T instance) where T : class => Of(typeof(T)).FaultsOf(instance);

    /// <summary>The validator of a type; made once.</summary>
    public static IContractValidator Of(Type type) => Made.GetOrAdd(type, Make);

    private static IContractValidator Make(Type type)
    {
        Type validator = Written.GetValueOrDefault(type) ?? typeof(ContractValidator<>).MakeGenericType(type);
        var made = (IContractValidator)Activator.CreateInstance(validator)!;
        made.CheckNested();
        return made;
    }
}
