using System.Collections.Immutable;
using System.Diagnostics;

namespace Spoolbook.Watching;

/// <summary>Waits for a save to be over: for a change, and then for a moment in which nothing changes.</summary>
/// <param name="look">Looks at the files.</param>
/// <param name="pause">Waits between two looks; false where it is to stop.</param>
internal sealed class SaveWatch(Func<FolderSnapshot> look, Func<TimeSpan, bool> pause)
{
    static readonly TimeSpan _betweenLooks = TimeSpan.FromMilliseconds(25);

    // Of a large production a look takes longer: it may take a twentieth of the time.
    const int Rest = 20;

    // An editor empties a file, writes it, and sometimes renames it over the old one.
    static readonly TimeSpan _quiet = TimeSpan.FromMilliseconds(30);

    FolderSnapshot _seen = look();

    /// <summary>Whether the production was there at the last look.</summary>
    public bool Exists => _seen.Exists;

    /// <summary>The names of what changed; null where it is to stop. A change during the work on the last one is told at once.</summary>
    /// <param name="most">How long to wait for a change; then nothing has changed. Null to wait for ever.</param>
    public ImmutableArray<string>? Next(TimeSpan? most = null)
    {
        var waited = TimeSpan.Zero;
        while (true)
        {
            var began = Stopwatch.GetTimestamp();
            var now = look();
            var took = Stopwatch.GetElapsedTime(began);
            if (!now.IsSame(_seen))
            {
                return Settled(now);
            }

            if (waited >= most)
            {
                return [];
            }

            var rest = took * Rest > _betweenLooks ? took * Rest : _betweenLooks;
            if (!pause(rest))
            {
                return null;
            }

            waited += rest;
        }
    }

    ImmutableArray<string>? Settled(FolderSnapshot now)
    {
        while (true)
        {
            if (!pause(_quiet))
            {
                return null;
            }

            var again = look();
            if (again.IsSame(now))
            {
                var changed = now.Since(_seen);
                _seen = now;
                return changed;
            }

            now = again;
        }
    }
}
