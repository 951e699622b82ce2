using System.Globalization;
using Cablewright.Engine.Conductors;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Published;

/// <summary>
/// Source: GNU units, functions <c>awg</c> (ASTM B258) and constants <c>copperconductivity</c> and <c>copperdensity</c> (the
/// International Annealed Copper Standard), asked of the program itself.
/// </summary>
public class GaugeFormulaTests
{
    private static readonly Lazy<double[][]> Answers = new(AskUnits);

    public static TheoryData<int, string> Gauges()
    {
        var gauges = new TheoryData<int, string>();
        for (int number = 22; number >= -3; number--) gauges.Add(number, Label(number));
        return gauges;
    }

    [Theory]
    [MemberData(nameof(Gauges))]
    public void Area_is_that_of_the_gauge_formula(int number, string label)
    {
        double diameterMm = Answers.Value[22 - number][0];
        Near.Relative(Math.PI / 4 * diameterMm * diameterMm, ConductorSize.Of(label).MetalAreaMm2, 1e-9, label);
    }

    [Theory]
    [MemberData(nameof(Gauges))]
    public void Resistance_of_the_solid_conductor_is_that_of_the_copper_standard(int number, string label)
    {
        double solid = Conductor.Of(ConductorSize.Of(label), Material.Copper).OhmsPerMetreAt20 / Stranding.LayFactor;
        Near.Relative(Answers.Value[22 - number][1], solid, 1e-9, label);
    }

    [Theory]
    [MemberData(nameof(Gauges))]
    public void Mass_of_the_solid_conductor_is_that_of_the_copper_standard(int number, string label)
    {
        double solid = Conductor.Of(ConductorSize.Of(label), Material.Copper).KilogramsPerMetre / Stranding.LayFactor;
        Near.Relative(Answers.Value[22 - number][2], solid, 1e-9, label);
    }

    private static string Label(int number) =>
        number > 0 ? number.ToString(CultureInfo.InvariantCulture) + " AWG" : $"{1 - number}/0 AWG";

    private static double[][] AskUnits()
    {
        string questions = string.Concat(Enumerable.Range(-3, 26).Reverse().Select(number =>
            $"awg({number})\nmm\n1 / (copperconductivity circlearea(awg({number})/2))\nohm/m\n"
            + $"copperdensity circlearea(awg({number})/2)\nkg/m\n"));
        string answers = OutsideProgram.Run("units", "units", questions, "-q", "-t", "-d", "14");
        double[] numbers =
            [.. answers.Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Select(line => double.Parse(line, CultureInfo.InvariantCulture))];
        return [.. numbers.Chunk(3)];
    }
}
