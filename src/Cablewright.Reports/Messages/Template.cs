using System.Text;
using Cablewright.Contract.Assessments;
using Cablewright.Vocabulary;

namespace Cablewright.Reports.Messages;

/// <summary>A sentence with holes: <c>{name}</c>, or <c>{name:form}</c> where the name alone does not say how.</summary>
internal sealed class Template
{
    private readonly Piece[] pieces;

    private Template(Piece[] pieces) => this.pieces = pieces;

    /// <summary>The names of its holes.</summary>
    public IEnumerable<string> Names => pieces.Where(piece => piece.Name is not null).Select(piece => piece.Name!);

    /// <summary>What stands between its holes.</summary>
    public IEnumerable<string> Literals => pieces.Where(piece => piece.Name is null).Select(piece => piece.Text);

    public static Template Parse(string text)
    {
        var pieces = new List<Piece>();
        for (int at = 0; at < text.Length;)
        {
            int open = text.IndexOf('{', at), end = open < 0 ? text.Length : open;
            if (end > at) pieces.Add(new Piece(null, text[at..end]));
            if (open < 0) break;
            int close = text.IndexOf('}', open);
            string[] hole = text[(open + 1)..close].Split(':', 2);
            string form = hole.Length > 1 ? hole[1] : "";
            bool isId = text[..open].EndsWith('"') || form.Contains('"', StringComparison.Ordinal);
            pieces.Add(new Piece(hole[0], form, isId));
            at = close + 1;
        }

        return new Template([.. pieces]);
    }

    /// <summary>The sentence with the values put in.</summary>
    public string Fill(IReadOnlyDictionary<string, Param> values, UnitSystem units, GivenNames? names = null)
    {
        var text = new StringBuilder();
        foreach (Piece piece in pieces) text.Append(piece.Name is null ? piece.Text : Shown(piece, values, units, names));
        return text.ToString();
    }

    private static string Shown(
        Piece piece, IReadOnlyDictionary<string, Param> values, UnitSystem units, GivenNames? names)
    {
        Param value = values[piece.Name!];
        return ValueForms.Text(
            piece.Name!, piece.Text, piece.IsId && names is not null ? names.Shown(piece.Name!, value) : value, units);
    }

    /// <summary>A piece of it.</summary>
    /// <param name="Name">The hole's name; <c>null</c> for what stands there as it is.</param>
    /// <param name="Text">The hole's form, or what stands there.</param>
    /// <param name="IsId">Whether it stands in quotes, as ids do.</param>
    private readonly record struct Piece(string? Name, string Text, bool IsId = false);
}
