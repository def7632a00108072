using System.ComponentModel;
using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Spoolbook;

/// <summary>The whole program, which lies in the folder <c>whole</c> beside this one and writes to the same terminal.</summary>
internal static class WholeProgram
{
    // POSIX: the number of the signal that asks a process to end.
    const int Terminate = 15;

    // Files are whole at every moment, so it may be ended hard if it does not hear.
    static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(700);

    public static int Run(string[] args)
    {
        var file = Path.Combine(AppContext.BaseDirectory, "whole", OperatingSystem.IsWindows() ? "spoolbook.exe" : "spoolbook");
        Process? whole = null;
        // A terminal sends the interrupt to both: the whole program hears it itself, and this one only waits.
        Console.CancelKeyPress += (_, e) => e.Cancel = true;
        // A `kill` reaches this one alone.
        using var terminated = PosixSignalRegistration.Create(PosixSignal.SIGTERM, End);
        using var hungUp = PosixSignalRegistration.Create(PosixSignal.SIGHUP, End);
        try
        {
            using var started = Process.Start(new ProcessStartInfo(file, args) { UseShellExecute = false })!;
            whole = started;
            started.WaitForExit();
            return started.ExitCode;
        }
        catch (Win32Exception e)
        {
            Console.Error.WriteLine(
                $"spoolbook: {file} does not start: {e.Message}. Only check, explain and reckon go without it; copy the whole folder "
                    + $"that was published."
            );
            return ExitStatus.OutsideFailed;
        }

        void End(PosixSignalContext context)
        {
            if (whole is not { HasExited: false } running)
            {
                return;
            }

            context.Cancel = true;
            if (OperatingSystem.IsWindows() || kill(running.Id, Terminate) != 0 || !running.WaitForExit(Patience))
            {
                running.Kill();
            }
        }
    }

    // The framework's own way to end a process gives it no time to close its files.
    [DllImport("libc")]
    static extern int kill(int process, int signal);
}
