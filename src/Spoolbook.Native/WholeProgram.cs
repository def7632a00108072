using System.ComponentModel;
using System.Diagnostics;

namespace Spoolbook;

/// <summary>The whole program, which lies in the folder <c>whole</c> beside this one and writes to the same terminal.</summary>
internal static class WholeProgram
{
    public static int Run(string[] args)
    {
        var file = Path.Combine(AppContext.BaseDirectory, "whole", OperatingSystem.IsWindows() ? "spoolbook.exe" : "spoolbook");
        // It hears the interrupt itself, and closes its files; this one only waits.
        Console.CancelKeyPress += (_, e) => e.Cancel = true;
        try
        {
            using var whole = Process.Start(new ProcessStartInfo(file, args) { UseShellExecute = false })!;
            whole.WaitForExit();
            return whole.ExitCode;
        }
        catch (Win32Exception e)
        {
            Console.Error.WriteLine(
                $"spoolbook: {file} does not start: {e.Message}. Only check, explain and reckon go without it; copy the whole folder "
                    + $"that was published."
            );
            return ExitStatus.OutsideFailed;
        }
    }
}
