using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>
/// Where the film stands before each entry, as the sheet counts it: for a take that writes its length instead of
/// its end. Unknown after an entry that could not be read, until the next that says where it ended.
/// </summary>
public sealed class FilmStand(Load? load)
{
    /// <summary>Position on the sheet's counting; null where nobody can tell.</summary>
    public Footage? Now { get; private set; } = load is null ? null : load.Head?.Value ?? Footage.Zero;

    /// <summary>The film standing somewhere, whatever brought it there.</summary>
    public static FilmStand At(Footage? position) => new(null) { Now = position };

    /// <summary>Moves on past an entry; null for one that could not be read.</summary>
    public void Follow(LogEntry? entry) => Now = entry switch
    {
        Take take => take.To.Value,
        Rewind rewind => rewind.To.Value,
        RunOff runOff => runOff.To.Value,
        Reload { To: { } to } => to.Value,
        Reload reload => Now + (reload.Lost?.Value ?? Footage.Zero) - (reload.ZeroMoved?.Value ?? Footage.Zero),
        Fog or Wind or Remark => Now,
        _ => null,
    };
}
