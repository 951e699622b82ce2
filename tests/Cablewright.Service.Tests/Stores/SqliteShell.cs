using System.ComponentModel;
using System.Diagnostics;

namespace Cablewright.Service.Tests.Stores;

/// <summary>SQLite's own shell, with which an operator backs up and restores (Debian package <c>sqlite3</c>).</summary>
internal static class SqliteShell
{
    public static string Run(string file, string input)
    {
        var start = new ProcessStartInfo("sqlite3", ["-bail", file])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
        };
        try
        {
            using Process process = Process.Start(start)!;
            Task<string> output = process.StandardOutput.ReadToEndAsync();
            process.StandardInput.Write(input);
            process.StandardInput.Close();
            process.WaitForExit();
            Assert.Equal(0, process.ExitCode);
            return output.Result;
        }
        catch (Win32Exception missing)
        {
            throw new InvalidOperationException("SQLite's shell is needed here; install with: apt-get install sqlite3", missing);
        }
    }
}
