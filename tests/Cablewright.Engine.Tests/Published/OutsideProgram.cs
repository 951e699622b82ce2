using System.ComponentModel;
using System.Diagnostics;

namespace Cablewright.Engine.Tests.Published;

/// <summary>Runs a general-purpose program that the engine is checked against. A machine without it fails the test.</summary>
internal static class OutsideProgram
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(50);

    public static string Run(string program, string debianPackage, string input, params string[] arguments)
    {
        using var process = new Process { StartInfo = Instructions(program, arguments) };
        try
        {
            process.Start();
        }
        catch (Win32Exception missing)
        {
            throw new InvalidOperationException($"{program} is not here; install with: apt-get install {debianPackage}", missing);
        }

        Task<string> output = process.StandardOutput.ReadToEndAsync();
        Task<string> errors = process.StandardError.ReadToEndAsync();
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        if (process.WaitForExit(Patience) && process.ExitCode == 0) return output.Result;
        if (!process.HasExited) process.Kill();
        throw new InvalidOperationException($"{program} gave no result. {errors.Result} {output.Result}");
    }

    private static ProcessStartInfo Instructions(string program, string[] arguments) => new(program, arguments)
    {
        RedirectStandardInput = true,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
        Environment = { ["LC_ALL"] = "C" },
    };
}
