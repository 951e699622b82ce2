using Cablewright.Vocabulary;

namespace Cablewright.Reports.Messages;

/// <summary>Makes sentences in a caller's language, units and names.</summary>
internal sealed class Speech(UnitSystem units, GivenNames? names = null)
{
    private readonly Catalogue catalogue = Catalogue.English;

    /// <summary>Whether there is such a sentence.</summary>
    public bool Knows(string key) => catalogue.Templates.ContainsKey(key);

    /// <summary>A sentence with its values put in.</summary>
    public string Text(string key, Params values) => catalogue.Text(key, values, units, names);

    /// <summary>The same, with the values beside it.</summary>
    public Message Say(string key, Params values) => new(Text(key, values), values);

    /// <summary>A sentence about a finding that was made before, in the hole <c>finding</c>; the values of both.</summary>
    public Message SayOf(Message finding, string key, Params values) =>
        new(Text(key, values.And(new Params { ["finding"] = finding.Text })), finding.Params.And(values));

    /// <summary>One value by itself, as a sentence shows it.</summary>
    public string Value(string name, Params values) => ValueForms.Text(name, "", values[name], units);
}
