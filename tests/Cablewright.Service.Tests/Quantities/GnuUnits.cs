using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;

namespace Cablewright.Service.Tests.Quantities;

/// <summary>GNU units, a general-purpose converter with definitions of its own (Debian package <c>units</c>).</summary>
internal static class GnuUnits
{
    public static double Convert(string from, string into)
    {
        using Process process = Start(from, into);
        string answer = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0
            ? double.Parse(answer, CultureInfo.InvariantCulture)
            : throw new InvalidOperationException($"GNU units does not turn \"{from}\" into \"{into}\": {answer}");
    }

    private static Process Start(string from, string into)
    {
        try
        {
            return Process.Start(new ProcessStartInfo("units", ["--terse", "--output-format", "%.17g", from, into])
            {
                RedirectStandardOutput = true,
            })!;
        }
        catch (Win32Exception missing)
        {
            throw new InvalidOperationException("GNU units is needed here; install with: apt-get install units", missing);
        }
    }
}
