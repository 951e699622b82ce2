using Cablewright.Contract.Assessments;

namespace Cablewright.Reports.Messages;

/// <summary>The values of which a sentence is made, by their names; a number's name ends in its unit.</summary>
internal sealed class Params : OrderedDictionary<string, Param>
{
    public Params()
    {
    }

    private Params(Params others)
        : base(others)
    {
    }

    /// <summary>The values, or <c>null</c> where there are none.</summary>
    public Params? OrNone => Count > 0 ? this : null;

    /// <summary>These values and others.</summary>
    public Params And(Params others)
    {
        var all = new Params(this);
        foreach ((string name, Param value) in others) all[name] = value;
        return all;
    }
}
