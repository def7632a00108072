using System.ComponentModel;
using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Spoolbook;

/// <summary>The whole program, which lies in the folder <c>whole</c> beside this one and writes to the same terminal.</summary>
internal static class WholeProgram
{
    // POSIX: the numbers of the signals that interrupt a process and that ask it to end.
    const int Interruption = 2,
        Terminate = 15;

    // Standard input, output and error.
    static readonly int[] _streams = [0, 1, 2];

    // Files are whole at every moment, so it may be ended hard if it does not hear.
    static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(700);

    public static int Run(string[] args)
    {
        var file = Path.Combine(AppContext.BaseDirectory, "whole", OperatingSystem.IsWindows() ? "spoolbook.exe" : "spoolbook");
        Process? whole = null;
        // Ctrl-C reaches both: the whole program hears it itself, and this one only waits. A `kill` reaches this one alone.
        using var interrupted = PosixSignalRegistration.Create(PosixSignal.SIGINT, Interrupt);
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

        void Interrupt(PosixSignalContext context)
        {
            context.Cancel = true;
            if (whole is { HasExited: false } running && !OperatingSystem.IsWindows() && !HasTerminal())
            {
                _ = kill(running.Id, Interruption);
            }
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

    // Whether keys typed at a terminal are for this process and its own: it is in the foreground there.
    static bool HasTerminal()
    {
        var group = getpgrp();
        return _streams.Any(stream => tcgetpgrp(stream) == group);
    }

    [DllImport("libc")]
    static extern int getpgrp();

    [DllImport("libc")]
    static extern int tcgetpgrp(int stream);

    // The framework's own way to end a process gives it no time to close its files.
    [DllImport("libc")]
    static extern int kill(int process, int signal);
}
