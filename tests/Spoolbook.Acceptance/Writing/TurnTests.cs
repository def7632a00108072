using System.Collections.Concurrent;
using Spoolbook.Writing;

namespace Spoolbook.Acceptance.Writing;

/// <summary>Those who wait to write in a folder take turns.</summary>
public sealed class TurnTests : IDisposable
{
    static readonly TimeSpan _patience = TimeSpan.FromMinutes(2);

    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    string Folder => _bench.PathOf("production");

    string Hidden => WorkFolder.InHidden(Folder, "");

    [Fact]
    public async Task Whoever_came_first_is_next()
    {
        const int Waiting = 6;
        var order = new ConcurrentQueue<int>();
        var waiting = new List<Task>();
        using (Open())
        {
            for (var number = 0; number < Waiting; number++)
            {
                var came = number;
                waiting.Add(
                    Task.Factory.StartNew(
                        () =>
                        {
                            using var turn = Open();
                            order.Enqueue(came);
                        },
                        TaskCreationOptions.LongRunning
                    )
                );
                SpinWait.SpinUntil(() => Directory.GetFiles(Hidden, "turn-*").Length > came, _patience);
            }
        }

        await Task.WhenAll(waiting);

        Assert.Equal(Enumerable.Range(0, Waiting), order);
        Assert.False(Directory.Exists(Hidden));
    }

    [Fact]
    public void The_place_of_one_who_was_killed_holds_nobody_up()
    {
        Directory.CreateDirectory(Hidden);
        var place = Path.Combine(Hidden, "turn-0000000000000000001-gone");
        File.WriteAllText(place, "");

        Open().Dispose();

        Assert.False(File.Exists(place));
        Assert.False(Directory.Exists(Hidden));
    }

    WorkFolder Open()
    {
        var around = new CommandEnvironment(TextWriter.Null, TextWriter.Null, _bench.Folder, Workbench.Made, Colour: false, Width: 100);
        return WorkFolder.Open(Folder, "log", around, _patience);
    }
}
