using System.Globalization;

namespace Cablewright.Engine.Tests.Published.Ngspice;

/// <summary>Puts a netlist to Debian's ngspice.</summary>
internal static class Simulator
{
    /// <summary>What a netlist prints, by name.</summary>
    public static Dictionary<string, double> Printed(string netlist) => Read(Run(netlist));

    /// <summary>What a netlist in a file prints, by name.</summary>
    public static Dictionary<string, double> PrintedByFile(string path) =>
        Read(OutsideProgram.Run("ngspice", "ngspice", "", "-b", path));

    private static Dictionary<string, double> Read(string output) => output.Split('\n')
        .Select(line => line.Split(" = "))
        .Where(parts => parts.Length == 2 && double.TryParse(parts[1], NumberStyles.Float, CultureInfo.InvariantCulture, out _))
        .ToDictionary(parts => parts[0], parts => double.Parse(parts[1], CultureInfo.InvariantCulture));

    private static string Run(string netlist)
    {
        string path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".cir");
        File.WriteAllText(path, netlist);
        try
        {
            return OutsideProgram.Run("ngspice", "ngspice", "", "-b", path);
        }
        finally
        {
            File.Delete(path);
        }
    }
}
