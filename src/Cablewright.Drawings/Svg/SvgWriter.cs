using System.Globalization;
using System.Text;
using System.Xml;

namespace Cablewright.Drawings.Svg;

/// <summary>
/// Writes a picture as SVG. Looks are presentation attributes beside a class, so that a page can style it and no content security
/// policy has to allow styles inside.
/// </summary>
internal sealed class SvgWriter : IDisposable
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    private readonly StringBuilder text = new();
    private readonly XmlWriter xml;

    /// <summary>Begins a picture.</summary>
    /// <param name="name">What its ids begin with, so that two pictures can stand on one page.</param>
    /// <param name="width">Width in pixels.</param>
    /// <param name="height">Height in pixels.</param>
    /// <param name="title">What it shows, in a line.</param>
    /// <param name="description">The same as a text that stands for the picture.</param>
    public SvgWriter(string name, double width, double height, string title, string description)
    {
        xml = XmlWriter.Create(text, new XmlWriterSettings { OmitXmlDeclaration = true, CheckCharacters = true });
        xml.WriteStartElement("svg", Namespace);
        Attribute("viewBox", $"0 0 {Figure(width)} {Figure(height)}");
        Attribute("width", width);
        Attribute("height", height);
        Attribute("class", "cw-" + name);
        Attribute("role", "img");
        Attribute("aria-labelledby", $"{name}-title {name}-desc");
        Attribute("font-family", "Helvetica, Arial, 'Liberation Sans', sans-serif");
        WithText("title", name + "-title", title);
        WithText("desc", name + "-desc", description);
        Rectangle("cw-paper", 0, 0, width, height, fill: "#ffffff");
    }

    /// <summary>The picture.</summary>
    public string Finish()
    {
        xml.WriteEndElement();
        xml.Flush();
        return text.ToString();
    }

    /// <inheritdoc/>
    public void Dispose() => xml.Dispose();

    /// <summary>Begins a group.</summary>
    public void Group(string classes, string? id = null)
    {
        Start("g", classes);
        if (id is not null) Attribute("id", id);
    }

    /// <summary>Ends a group.</summary>
    public void EndGroup() => xml.WriteEndElement();

    /// <summary>A straight line.</summary>
    public void Line(string classes, double x1, double y1, double x2, double y2, string stroke, double width, string? dash = null)
    {
        Start("line", classes);
        Attribute("x1", x1);
        Attribute("y1", y1);
        Attribute("x2", x2);
        Attribute("y2", y2);
        Stroke(stroke, width, dash);
        Attribute("stroke-linecap", "square");
        xml.WriteEndElement();
    }

    /// <summary>A line of several parts, or a filled shape.</summary>
    public void Path(
        string classes, string data, string fill = "none", string stroke = "none", double width = 0, string? dash = null)
    {
        Start("path", classes);
        Attribute("d", data);
        Attribute("fill", fill);
        Stroke(stroke, width, dash);
        xml.WriteEndElement();
    }

    /// <summary>A rectangle.</summary>
    public void Rectangle(
        string classes, double x, double y, double width, double height, string fill = "none", string stroke = "none",
        double line = 0, double round = 0)
    {
        Start("rect", classes);
        Attribute("x", x);
        Attribute("y", y);
        Attribute("width", width);
        Attribute("height", height);
        if (round > 0) Attribute("rx", round);
        Attribute("fill", fill);
        Stroke(stroke, line, null);
        xml.WriteEndElement();
    }

    /// <summary>A circle.</summary>
    public void Circle(
        string classes, double x, double y, double radius, string fill = "none", string stroke = "none", double line = 0)
    {
        Start("circle", classes);
        Attribute("cx", x);
        Attribute("cy", y);
        Attribute("r", radius);
        Attribute("fill", fill);
        Stroke(stroke, line, null);
        xml.WriteEndElement();
    }

    /// <summary>A line of text on its base line.</summary>
    /// <param name="classes">Its classes.</param>
    /// <param name="x">Where it starts, ends or has its middle.</param>
    /// <param name="y">Its base line.</param>
    /// <param name="words">The text.</param>
    /// <param name="size">Height of the letters in pixels.</param>
    /// <param name="fill">Their colour.</param>
    /// <param name="isBold">Whether they are bold.</param>
    /// <param name="anchor"><c>start</c>, <c>middle</c> or <c>end</c>.</param>
    /// <param name="whole">The whole of a text that is shortened.</param>
    public void Text(
        string classes, double x, double y, string words, double size, string fill = "#17202a", bool isBold = false,
        string anchor = "start", string? whole = null)
    {
        Start("text", classes);
        Attribute("x", x);
        Attribute("y", y);
        Attribute("font-size", size);
        if (isBold) Attribute("font-weight", "bold");
        if (anchor != "start") Attribute("text-anchor", anchor);
        Attribute("fill", fill);
        if (whole is not null) xml.WriteElementString("title", Namespace, whole);
        xml.WriteString(words);
        xml.WriteEndElement();
    }

    /// <summary>A number as it stands in an attribute.</summary>
    public static string Figure(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);

    private void WithText(string element, string id, string words)
    {
        xml.WriteStartElement(element, Namespace);
        Attribute("id", id);
        xml.WriteString(words);
        xml.WriteEndElement();
    }

    private void Start(string element, string classes)
    {
        xml.WriteStartElement(element, Namespace);
        Attribute("class", classes);
    }

    private void Stroke(string stroke, double width, string? dash)
    {
        if (stroke == "none") return;
        Attribute("stroke", stroke);
        Attribute("stroke-width", width);
        if (dash is not null) Attribute("stroke-dasharray", dash);
    }

    private void Attribute(string name, double value) => Attribute(name, Figure(value));

    private void Attribute(string name, string value) => xml.WriteAttributeString(name, value);
}
