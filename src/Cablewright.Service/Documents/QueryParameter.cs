using System.Reflection;

namespace Cablewright.Service.Documents;

/// <summary>A query parameter; it stands for a member of a contract type.</summary>
/// <param name="Name">Its name.</param>
/// <param name="IsRequired">Whether it must be there.</param>
/// <param name="Member">The member of the contract that it stands for; its attributes hold here too.</param>
/// <param name="Pointer">Where that member is in the build that the query stands for, if it stands for one.</param>
internal sealed record QueryParameter(string Name, bool IsRequired, PropertyInfo Member, string? Pointer)
{
    /// <summary>What it does, where it stands for no member of the build.</summary>
    public string? Description { get; init; }

    /// <summary>A parameter for a member of a contract type.</summary>
    public static QueryParameter Of<T>(string name, string member, string pointer, bool isRequired = false) =>
        new(name, isRequired, typeof(T).GetProperty(member)!, pointer);

    /// <summary>A parameter that says how to answer.</summary>
    public static QueryParameter Plain<T>(string name, string member, string description) =>
        new(name, false, typeof(T).GetProperty(member)!, null) { Description = description };
}
