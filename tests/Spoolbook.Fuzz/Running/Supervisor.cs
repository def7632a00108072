using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;

namespace Spoolbook.Fuzz.Running;

/// <summary>Starts workers for a target one after the other until its time is over, and files what they die of.</summary>
internal sealed class Supervisor(Places places, string target, IReadOnlyList<string> options)
{
    volatile bool _stopped;

    public void Run(double seconds)
    {
        using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
        using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);
        var watch = Stopwatch.StartNew();
        while (!_stopped && seconds - watch.Elapsed.TotalSeconds is > 1 and var left)
        {
            var (status, said) = Work(left);
            if (status is ExitCode.Done or ExitCode.Afresh || _stopped)
            {
                continue;
            }

            var find = Find.OfCrash(status, said);
            if (find.Save(places.Finds, File.Exists(places.Current) ? File.ReadAllBytes(places.Current) : []))
            {
                Console.WriteLine($"  find: {find.Key}");
            }
        }

        Console.WriteLine(Report.Line(target, places));
    }

    (int Status, string Said) Work(double seconds)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!)
        {
            RedirectStandardInput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        string[] arguments =
        [
            .. Environment.ProcessPath!.EndsWith("dotnet", StringComparison.Ordinal)
                ? [typeof(Supervisor).Assembly.Location]
                : (string[])[],
            "--work",
            target,
            seconds.ToString("0", CultureInfo.InvariantCulture),
            .. options,
        ];
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        using var worker = Process.Start(start)!;
        var said = worker.StandardError.ReadToEnd();
        worker.WaitForExit();
        return (worker.ExitCode, said);
    }

    void Stop(PosixSignalContext signal)
    {
        signal.Cancel = true;
        _stopped = true;
    }
}
