using Cablewright.Vocabulary;

namespace Cablewright.Service.Queries;

/// <summary>What can be wrong with a query string before its content is looked at.</summary>
internal static class QueryCodes
{
    [Meaning("A query parameter that the call does not know; the detail names the nearest known one.")]
    public const string Unknown = "parameter.unknown";

    [Meaning("A query parameter given more than once.")]
    public const string Repeated = "parameter.repeated";

    [Meaning("A query parameter that must be there and is not.")]
    public const string Missing = "parameter.missing";

    [Meaning("A query parameter that is no number in its range, or no cursor.")]
    public const string Unreadable = "parameter.unreadable";
}
