using System.Xml.Linq;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Drawings.Text;
using Cablewright.Drawings.Wiring;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Drawings;

/// <summary>What a caller writes stays text, whatever it is.</summary>
public class HostileNameTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private const string Svg = "{http://www.w3.org/2000/svg}";

    public static TheoryData<string> Hostile =>
    [
        "<script>alert(1)</script>", "</text></svg><img src=x onerror=alert(1)>", "\"' onload=\"alert(1)", "]]>&amp;&#0;",
        "\u05E9\u05DC\u05D5\u05DD \u0645\u0631\u062D\u0628\u0627", "\u202Ereversed", "a\u0000b\u0001c\uFFFE\uD800d",
        new string('W', 200),
        string.Join(' ', Enumerable.Repeat("estate", 40)),
    ];

    [Theory]
    [MemberData(nameof(Hostile))]
    public async Task A_name_is_drawn_as_text(string name)
    {
        (Build build, Assessment answer) = (await service.To(Builds.Small))!.Value;
        XElement svg = XElement.Parse(WiringDrawing.Svg(build with { Name = name }, answer));
        string[] elements = ["svg", "title", "desc", "g", "rect", "circle", "line", "path", "text"];
        Assert.All(svg.DescendantsAndSelf(), element =>
        {
            Assert.Equal(Svg + element.Name.LocalName, element.Name.ToString());
            Assert.Contains(element.Name.LocalName, elements);
            Assert.DoesNotContain(element.Attributes(), attribute => attribute.Name.LocalName is "style" or "href"
                || attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase));
        });
        Assert.Empty(LayoutCheck.Troubles(LayoutMaker.Of(build with { Name = name }, answer)));
        string title = svg.Element(Svg + "title")!.Value;
        Assert.Contains(Names.Clean(name), title, StringComparison.Ordinal);
        Assert.DoesNotContain(title, letter => char.IsControl(letter) || letter is '\u202E');
    }

    [Fact]
    public async Task A_picture_says_in_words_what_it_shows()
    {
        (Build build, Assessment answer) = (await service.To(Builds.Small))!.Value;
        XElement svg = XElement.Parse(WiringDrawing.Svg(build, answer));
        Assert.Equal("img", (string?)svg.Attribute("role"));
        string[] labels = ((string)svg.Attribute("aria-labelledby")!).Split(' ');
        Assert.Equal(labels, svg.Elements().Where(child => child.Name.LocalName is "title" or "desc")
            .Select(child => (string)child.Attribute("id")!));
        string words = svg.Element(Svg + "desc")!.Value;
        Assert.All(
            ["Run feed leads from starter to bass, 12 ft of 4 AWG copper", "a fuse of 80 A ANL", "Safety:"],
            said => Assert.Contains(said, words));
    }

    [Theory]
    [InlineData("one two three", 1000, "one two three")]
    [InlineData("one two three", 60, "one two|three")]
    [InlineData("wwwwwwwwww", 40, "www|www|www|w")]
    public void Words_are_broken_where_they_do_not_fit(string text, double width, string lines) =>
        Assert.Equal(lines.Split('|'), Lines.Of(text, width, 12, false, 9));

    [Fact]
    public void What_does_not_fit_the_last_line_ends_in_an_ellipsis() =>
        Assert.Equal(["one two", "three fo..."], Lines.Of("one two three four five", 65, 12, false, 2));
}
