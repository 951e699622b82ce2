using System.Collections.Concurrent;
using System.Collections.Frozen;
using Cablewright.Service.Problems;
using FluentValidation;

namespace Cablewright.Service.Validation;

/// <summary>
/// The one validator of each contract type: the class that is written for it, wherever that is, or else its members as
/// they are. Whatever stands in an instance is checked by these too, so that none needs to be named to be used.
/// </summary>
internal static class Validators
{
    private static readonly FrozenDictionary<Type, Type> Written = AssemblyScanner
        .FindValidatorsInAssembly(typeof(Validators).Assembly, includeInternalTypes: true)
        .ToFrozenDictionary(found => found.InterfaceType.GenericTypeArguments[0], found => found.ValidatorType);

    private static readonly ConcurrentDictionary<Type, IContractValidator> Made = new();

    /// <summary>Everything wrong with what an instance says, each fault with its place in it.</summary>
    public static IReadOnlyList<Fault> FaultsOf<T>(T instance) where T : class => Of(typeof(T)).FaultsOf(instance);

    /// <summary>The validator of a type; made once.</summary>
    public static IContractValidator Of(Type type) => Made.GetOrAdd(type, Make);

    private static IContractValidator Make(Type type) => Written.TryGetValue(type, out Type? validator)
        ? (IContractValidator)Activator.CreateInstance(validator)!
        : new ContractMembers(type);
}
