namespace Spoolbook.Acceptance;

/// <summary>
/// The papers of the repository's productions, made once for all test classes that read them; deleted after the last of
/// these.
/// </summary>
internal sealed class MadeOnce : IDisposable
{
    static readonly Lock _lock = new();
    static readonly Dictionary<string, Lazy<string>> _made = [];
    static Bench? _bench;
    static int _readers;

    public MadeOnce()
    {
        lock (_lock)
        {
            _bench ??= new Bench();
            _readers++;
            Folder = _bench.Folder;
        }
    }

    /// <summary>The folder with all of them, each in a folder of the production's name.</summary>
    public string Folder { get; }

    /// <summary>The folder of one production's papers.</summary>
    public string PapersOf(string production)
    {
        Lazy<string>? papers;
        lock (_lock)
        {
            if (!_made.TryGetValue(production, out papers))
            {
                var bench = _bench!;
                _made[production] = papers = new Lazy<string>(() => Make(bench, production));
            }
        }

        return papers.Value;
    }

    public void Dispose()
    {
        lock (_lock)
        {
            if (--_readers == 0)
            {
                _bench!.Dispose();
                _bench = null;
                _made.Clear();
            }
        }
    }

    static string Make(Bench bench, string production)
    {
        var name = Path.GetFileName(production);
        Assert.Equal(0, bench.Run("make", TestFolders.ProductionIn(production), "--out", name).Status);
        return bench.PathOf(name);
    }
}
