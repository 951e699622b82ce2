using System.Xml.Linq;
using Cablewright.Contract.Assessments;
using Cablewright.Drawings.Wiring;

namespace Cablewright.Service.Tests.Drawings;

/// <summary>What is wrong with a layout: what lies upon something else, or outside the picture.</summary>
internal static class LayoutCheck
{
    private const string Svg = "{http://www.w3.org/2000/svg}";
    private const double Touch = 0.01;

    public static IEnumerable<string> Troubles(WiringLayout layout)
    {
        Label[] labels = [.. layout.Labels, .. layout.Rows.SelectMany(row => row.Labels)];
        (string Name, Box Box)[] solid =
        [
            .. labels.Select(label => ($"label \"{label.Words}\"", label.Box)),
            .. layout.Rows.SelectMany(row => row.Symbols).Select(symbol => ($"symbol {symbol.Kind}", symbol.Box)),
            .. layout.Rows.Select(row => row.Mark).Concat(layout.NoteMarks).OfType<MarkSign>()
                .Select(mark => ($"mark {mark.Sign}", mark.Box)),
            .. layout.Lights.Select(light => ($"light {light.Verdict}", light.Box)),
        ];
        foreach ((int i, (string name, Box box)) in solid.Index())
        {
            if (box.X < -Touch || box.Y < -Touch || box.Right > layout.Width + Touch || box.Bottom > layout.Height + Touch)
                yield return $"{name} lies outside";
            for (int j = i + 1; j < solid.Length; j++)
            {
                if (Overlap(box, solid[j].Box)) yield return $"{name} lies upon {solid[j].Name}";
            }
        }

        foreach (Segment line in layout.Segments)
        {
            if (line.X1 != line.X2 && line.Y1 != line.Y2) yield return "a line is neither level nor plumb";
            Box box = new(
                Math.Min(line.X1, line.X2), Math.Min(line.Y1, line.Y2), Math.Abs(line.X1 - line.X2), Math.Abs(line.Y1 - line.Y2));
            foreach (Label label in labels.Where(label => Crosses(box, label.Box)))
                yield return $"a line crosses \"{label.Words}\"";
        }
    }

    /// <summary>Whether two lines of different runs lie along each other; where they only cross they are told apart.</summary>
    public static IEnumerable<string> Shared(WiringLayout layout) =>
        from one in layout.Segments.Index()
        where one.Item.X1 == one.Item.X2
        from other in layout.Segments.Skip(one.Index + 1)
        where other.X1 == other.X2 && other.X1 == one.Item.X1
        let top = Math.Max(Math.Min(one.Item.Y1, one.Item.Y2), Math.Min(other.Y1, other.Y2))
        let bottom = Math.Min(Math.Max(one.Item.Y1, one.Item.Y2), Math.Max(other.Y1, other.Y2))
        where bottom - top > Touch
        select $"two lines at {one.Item.X1} between {top} and {bottom}";

    /// <summary>Each run, each amplifier and each battery has a place of its own, by its id, exactly once.</summary>
    public static IEnumerable<string> Missing(XElement svg, Assessment answer)
    {
        string[] ids = [.. svg.Descendants(Svg + "g").Select(group => (string?)group.Attribute("id")).OfType<string>()];
        string[] expected =
        [
            .. answer.Runs.Select(run => "wiring-run-" + run.Id),
            .. answer.Amplifiers.Select(amplifier => "wiring-place-" + amplifier.Id),
            .. answer.Supply.Batteries.Select(battery => "wiring-place-" + battery.Id),
        ];
        return expected.Where(id => ids.Count(each => each == id) != 1)
            .Select(id => $"{id} is drawn {ids.Count(each => each == id)} times");
    }

    private static bool Overlap(Box one, Box other) =>
        Math.Min(one.Right, other.Right) - Math.Max(one.X, other.X) > Touch
        && Math.Min(one.Bottom, other.Bottom) - Math.Max(one.Y, other.Y) > Touch;

    private static bool Crosses(Box line, Box label) =>
        Math.Min(line.Right, label.Right) - Math.Max(line.X, label.X) > -Touch
        && Math.Min(line.Bottom, label.Bottom) - Math.Max(line.Y, label.Y) > -Touch;
}
