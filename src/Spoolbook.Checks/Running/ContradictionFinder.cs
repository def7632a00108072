using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Running;

/// <summary>Where a roll's log first goes wrong. What follows a wrong position is wrong because of it, and is not flagged.</summary>
static class ContradictionFinder
{
    /// <summary>The first slip, if it is one of those kinds.</summary>
    public static LogContradiction? First(RollBook book, params ContradictionKind[] kinds)
    {
        var first = book.Strip.Contradictions.FirstOrDefault(IsMistake);
        return first is not null && kinds.Contains(first.Kind) ? first : null;
    }

    /// <summary>Where the sheet has the position of the film before an entry; null at the head of the roll.</summary>
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

    // How far the light got through an open door is a guess, and may pass either end of the roll.
    static bool IsMistake(LogContradiction slip) => slip.Entry is not Fog;
}
