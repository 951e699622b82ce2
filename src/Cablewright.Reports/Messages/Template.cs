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
            pieces.Add(new Piece(hole[0], hole.Length > 1 ? hole[1] : ""));
            at = close + 1;
        }

        return new Template([.. pieces]);
    }

    /// <summary>The sentence with the values put in.</summary>
    public string Fill(IReadOnlyDictionary<string, Param> values, UnitSystem units)
    {
        var text = new StringBuilder();
        foreach (Piece piece in pieces)
            text.Append(piece.Name is null ? piece.Text : ValueForms.Text(piece.Name, piece.Text, values[piece.Name], units));
        return text.ToString();
    }

    /// <summary>A piece of it.</summary>
    /// <param name="Name">The hole's name; <c>null</c> for what stands there as it is.</param>
    /// <param name="Text">The hole's form, or what stands there.</param>
    private readonly record struct Piece(string? Name, string Text);
}
