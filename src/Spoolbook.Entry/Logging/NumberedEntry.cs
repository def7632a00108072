using Spoolbook.Reading.Editing;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Entry.Logging;

/// <summary>An entry from a line with a number.</summary>
/// <param name="Entry">The entry of the log; null for loading and unloading.</param>
/// <param name="Part">Loading or unloading; the roll itself for an entry of the log.</param>
/// <param name="Digest">Four digits of the line it came from.</param>
sealed record NumberedEntry(Roll Roll, LogEntry? Entry, RollPart Part, string Digest)
{
    /// <summary>The entry of a number; null where the record has none.</summary>
    public static NumberedEntry? Find(string number, Production production)
    {
        foreach (var roll in production.Rolls)
        {
            if (DigestOf(roll.Load.Line, number) is { } loaded)
            {
                return new NumberedEntry(roll, null, RollPart.Load, loaded);
            }

            if (DigestOf(roll.Unload?.Line, number) is { } unloaded)
            {
                return new NumberedEntry(roll, null, RollPart.Unload, unloaded);
            }

            foreach (var entry in roll.Log)
            {
                if (DigestOf(entry.Line, number) is { } logged)
                {
                    return new NumberedEntry(roll, entry, RollPart.Roll, logged);
                }
            }
        }

        return null;
    }

    static string? DigestOf(Located<string>? line, string number) =>
        line?.Value is { } text && text.StartsWith(number + "/", StringComparison.Ordinal) ? text[(number.Length + 1)..] : null;
}
