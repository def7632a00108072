using System.Globalization;

namespace Spoolbook.Acceptance.Logging;

/// <summary>Several people log into one production at the same time.</summary>
public sealed class LoggedAtOnceTests
{
    const int Assistants = 8,
        Takes = 50;

    // Each waits for its turn as another process would: the lock is an open file. scripts/writers-at-once starts real processes.
    [Fact]
    public void Of_eight_who_log_fifty_takes_each_at_once_none_loses_one()
    {
        using var bench = new LoggingBench();
        bench.CopyOf(Path.Combine(TestFolders.Clean, "hand-held-one-roll"));
        for (var roll = 1; roll <= Assistants; roll++)
        {
            var words = string.Create(
                CultureInfo.InvariantCulture,
                $"load C{roll} X/{roll} 2026-08-16 14:00 head 4 --anyway --in sunday.yaml"
            );
            Assert.Equal(0, bench.Run(["log", .. words.Split(' ')]).Status);
        }

        var found = Enumerable
            .Range(1, Assistants)
            .AsParallel()
            .WithDegreeOfParallelism(Assistants)
            .Select(roll => bench.Piped(Lines(roll), "log", "--anyway", "--in", "sunday.yaml"))
            .ToList();

        Assert.All(found, run => Assert.True(run.Status == 0, run.Out + run.Error));
        var text = bench.Read("sunday.yaml");
        for (var roll = 1; roll <= Assistants; roll++)
        {
            for (var take = 1; take <= Takes; take++)
            {
                var said = string.Create(CultureInfo.InvariantCulture, $"{{scene: {20 + roll}, shot: A, take: {take}, ");
                Assert.Equal(2, text.Split(said).Length);
            }
        }
    }

    static string Lines(int roll) =>
        string.Join(
            '\n',
            Enumerable
                .Range(1, Takes)
                .Select(take => string.Create(CultureInfo.InvariantCulture, $"C{roll}: {20 + roll}A/{take} to {4 + take} 25mm f11 G"))
        );
}
