using System.Globalization;
using Spoolbook.Fuzz.Targets;

namespace Spoolbook.Fuzz.Running;

/// <summary>Runs one input and says what came of it.</summary>
internal static class Replay
{
    const int SmallStack = 1 << 20;
    const int Times = 4;

    public static int Run(string target, byte[] input)
    {
        _ = new Coverage();
        Outcome? outcome = null;
        var thread = new Thread(
            () =>
            {
                // The first times, the compiler takes most of it.
                var runner = new Runner(TargetList.Find(target));
                for (var times = 0; times < Times; times++)
                {
                    outcome = runner.Run(input);
                    Console.WriteLine(
                        string.Create(
                            CultureInfo.InvariantCulture,
                            $"{outcome.Seconds:0.00} s of processor, {outcome.Allocated / 1_000_000} MB in all, "
                                + $"{Runner.Peak() / 1_000_000} MB at the peak"
                        )
                    );
                }
            },
            SmallStack
        );
        thread.Start();
        thread.Join();
        foreach (var word in outcome!.Words)
        {
            Console.WriteLine(word);
        }

        if (outcome.Find is not { } find)
        {
            return 0;
        }

        Console.WriteLine(find.Key + "\n" + find.Report);
        return 1;
    }
}
