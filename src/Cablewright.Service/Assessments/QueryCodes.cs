namespace Cablewright.Service.Assessments;

/// <summary>What can be wrong with a query string before its content is looked at.</summary>
public static class QueryCodes
{
    /// <summary>A parameter that the call does not know.</summary>
    public const string Unknown = "parameter.unknown";

    /// <summary>A parameter given more than once.</summary>
    public const string Repeated = "parameter.repeated";

    /// <summary>A parameter that must be there and is not.</summary>
    public const string Missing = "parameter.missing";

    /// <summary>A parameter that is no number in its range, or no cursor.</summary>
    public const string Unreadable = "parameter.unreadable";
}
