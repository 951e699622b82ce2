using System.Reflection;
using Cablewright.Contract.Assessments;
using Cablewright.Engine.Tests.Published;
using Cablewright.Engine.Tests.Published.Ngspice;
using Cablewright.Vocabulary;

namespace Cablewright.Engine.Tests.Golden;

public class GoldenTests
{
    public static TheoryData<string> Cases() => [.. GoldenCase.Names];

    public static TheoryData<string> CasesWithNetlist() =>
        [.. GoldenCase.Names.Where(name => GoldenCase.Read(name).Netlist is not null)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Every_figure_comes_out_within_its_tolerance(string name)
    {
        GoldenCase golden = GoldenCase.Read(name);
        Assessment answer = Assessed.Of(golden.Build);
        Assert.NotEmpty(golden.Expected.Figures);
        Assert.All(
            golden.Expected.Figures, figure => Near.Relative(figure.Value, Figure(answer, figure.Of), figure.Within, figure.Of));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_verdict_and_its_reasons_come_out(string name)
    {
        GoldenCase golden = GoldenCase.Read(name);
        Assessment answer = Assessed.Of(golden.Build);
        string[] codes =
            [.. answer.Findings.Where(finding => finding.Severity > Severity.Info).Select(finding => finding.Code).Distinct()
                .Order(StringComparer.Ordinal)];
        Assert.Equal(golden.Expected.Codes.Order(StringComparer.Ordinal), codes);
        Assert.Equal(golden.Expected.Verdict, answer.Verdict);
    }

    /// <summary>
    /// Source: ngspice, run on the netlist of the folder: the expected figures are its figures and nobody else's.
    /// </summary>
    [Theory]
    [MemberData(nameof(CasesWithNetlist))]
    public void The_expected_figures_are_those_of_the_netlist(string name)
    {
        GoldenCase golden = GoldenCase.Read(name);
        Dictionary<string, double> printed = Simulator.PrintedByFile(golden.Netlist!);
        Expectation[] simulated = [.. golden.Expected.Figures.Where(figure => figure.Netlist is not null)];
        Assert.NotEmpty(simulated);
        Assert.All(simulated, figure => Near.Relative(printed[figure.Netlist!], figure.Value, 1e-5, figure.Of));
    }

    private static double Figure(Assessment answer, string path)
    {
        string[] parts = path.Split('/');
        object of = parts[0] switch
        {
            "supply" => answer.Supply,
            "amplifiers" => answer.Amplifiers.Single(amplifier => amplifier.Id == parts[1]),
            "runs" => answer.Runs.Single(run => run.Id == parts[1]),
            _ => throw new ArgumentException($"No such part of an answer: {path}", nameof(path)),
        };
        foreach (string name in parts.Skip(parts[0] is "supply" ? 1 : 2))
        {
            PropertyInfo property = of.GetType()
                .GetProperty(name, BindingFlags.Public | BindingFlags.Instance | BindingFlags.IgnoreCase)
                ?? throw new ArgumentException($"No such figure: {path}", nameof(path));
            of = property.GetValue(of) ?? throw new ArgumentException($"The answer has none: {path}", nameof(path));
        }

        return (double)of;
    }
}
