using BenchmarkDotNet.Attributes;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Benchmarks;

/// <summary>
/// From a roll's log to its strip, account and effects. The time must grow with the takes (times their logarithm), and
/// stay the same when only the takes get longer.
/// </summary>
[MemoryDiagnoser]
public class StripBenchmark
{
    static readonly Place Nowhere = new("rolls/r01.yaml", 1, 1, 1);

    Production _production = null!;

    [Params(10, 100, 1_000, 10_000)]
    public int Takes { get; set; }

    [Params(40, 4_000)]
    public int FramesInTake { get; set; }

    [GlobalSetup]
    public void WriteTheSheet() =>
        _production = new Production(Nowhere)
        {
            Title = Written("Growth"),
            Code = Written("GROWTH"),
            Rolls = [RollOf(Takes, FramesInTake)],
        };

    [Benchmark]
    public ShootBook Keep() => BookKeeper.Keep(_production);

    // Every tenth take is rewound into, for a dissolve of twelve frames.
    static Roll RollOf(int takes, int frames)
    {
        var log = new List<LogEntry>();
        var stand = 0L;
        for (var i = 0; i < takes; i++)
        {
            var (opens, closes) = (i % 10 == 1, i % 10 == 0);
            if (opens)
            {
                stand -= 12;
                log.Add(new Rewind(Nowhere) { To = Written(new Footage(stand)), ShutterClosed = Written(true) });
            }

            stand += frames;
            log.Add(
                new Take(Nowhere)
                {
                    Scene = Written("1"),
                    Number = Written(i + 1),
                    To = Written(new Footage(stand)),
                    Mark = Written((Mark)(i % 3)),
                    FadeIn = opens ? Written(new Footage(12)) : null,
                    FadeOut = closes ? Written(new Footage(12)) : null,
                }
            );
        }

        return new Roll(Nowhere)
        {
            Name = Written("R01"),
            Length = Written(new Footage(stand + 40)),
            Load = new Load(Nowhere) { On = Written(new DateTime(2026, 10, 4)) },
            Log = [.. log],
        };
    }

    static Located<T> Written<T>(T value) => new(value, Nowhere);
}
