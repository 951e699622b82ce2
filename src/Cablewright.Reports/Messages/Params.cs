using Cablewright.Contract.Assessments;

namespace Cablewright.Reports.Messages;

/// <summary>The values of which a sentence is made, by their names; a number's name ends in its unit.</summary>
internal sealed class Params : OrderedDictionary<string, Param>
{
    /// <summary>The same values and more.</summary>
    public Params With(string name, Param value) => new(this) { [name] = value };

    public Params()
    {
    }

    private Params(Params others)
        : base(others)
    {
    }
}
