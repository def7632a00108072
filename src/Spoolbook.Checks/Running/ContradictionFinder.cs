using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Running;

/// <summary>Where a roll's log first goes astray. What follows a wrong position is wrong because of it, and not told.</summary>
static class ContradictionFinder
{
    /// <summary>The first slip, if it is of one of those kinds.</summary>
    public static LogContradiction? First(RollBook book, params ContradictionKind[] kinds)
    {
        var first = book.Strip.Contradictions.FirstOrDefault(IsMistake);
        return first is not null && kinds.Contains(first.Kind) ? first : null;
    }

    /// <summary>The place of the position that the film stood at before an entry, or null at the head of the roll.</summary>
    public static Place? StoodAt(RollBook book, LogEntry entry)
    {
        var before = book.Strip.Moves.TakeWhile(m => !ReferenceEquals(m.Entry, entry)).LastOrDefault(m => m.From != m.To);
        return before?.Entry switch
        {
            Take take => take.To.Place,
            Rewind rewind => rewind.To.Place,
            RunOff runOff => runOff.To.Place,
            Reload reload => reload.To?.Place ?? reload.Place,
            _ => book.Roll.Load.Head?.Place,
        };
    }

    // How far light reached through an open door is a guess, and may reach past either end of the roll.
    static bool IsMistake(LogContradiction slip) => slip.Entry is not Fog;
}
