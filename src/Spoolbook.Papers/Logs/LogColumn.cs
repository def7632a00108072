using System.Collections.Immutable;
using Spoolbook.Papers.Wording;

namespace Spoolbook.Papers.Logs;

/// <summary>A column of the log, which the camera report fills and the log sheet leaves to a hand.</summary>
/// <param name="Name">What the words files call its head, and a template its cell: <c>row.lens</c>.</param>
/// <param name="Head">What is printed over it.</param>
/// <param name="Look">How the report sets it, in classes of the vocabulary.</param>
/// <param name="BlankWidth">Its width on the log sheet; empty where it takes the rest.</param>
public sealed record LogColumn(string Name, string Head, string Look, string BlankWidth)
{
    const string Figure = "num nowrap",
        Word = "nowrap",
        Rest = "rest";

    /// <summary>What it says of a take.</summary>
    internal Func<TakeLine, string> Cell { get; private init; } = _ => "";

    /// <summary>The columns in their order: the number of the line first, what else there is to say of it last.</summary>
    /// <param name="withSound">Whether to have a column for the sound.</param>
    internal static ImmutableArray<LogColumn> All(Translations words, bool withSound)
    {
        // With one column more, the others give way: the remarks need the room.
        string Wide(string width, string narrow) => withSound ? narrow : width;
        return
        [
            Column("number", Figure, "7mm", line => PaperFormat.Number(line.Layer.Index + 1)),
            Column("slate", Word, Wide("17mm", "15mm"), line => line.Take.Slate),
            Column("from", Figure, Wide("15mm", "13mm"), line => line.Format.Length(line.Layer.Span.From)),
            Column("to", Figure, Wide("15mm", "13mm"), line => line.Format.Length(line.Layer.Span.To)),
            Column("length", Figure, Wide("13mm", "11mm"), line => line.Format.Length(line.Layer.Span.Length)),
            Column("seconds", Figure, Wide("10mm", "8mm"), line =>
                line.IsTimed ? line.Format.Seconds(line.Layer.Span.Length.Seconds(line.Take.Speed)) : "–"
            ),
            Column("speed", Figure, Wide("9mm", "8mm"), line =>
                line.IsTimed ? line.Format.AsWritten(line.Take.Speed) : words["single-frame-short"]
            ),
            Column("lens", Word, Wide("14mm", "12mm"), line => PaperFormat.OrDash(line.Take.Lens)),
            Column("stop", Figure, Wide("13mm", "11mm"), line => line.Format.AsWritten(line.Take.Stop)),
            Column("filter", Word, Wide("13mm", "12mm"), line => line.Filters),
            Column("focus", Figure, Wide("13mm", "12mm"), line => line.Format.Focus(line.Take.Focus?.Value)),
            Column("mark", Word, Wide("10mm", "9mm"), line => line.Format.Mark(line.Take.Mark.Value)),
            .. withSound ? [Column("sound", Word, "12mm", line => line.Sound)] : Array.Empty<LogColumn>(),
            Column("remarks", Rest, "", line => line.Remarks),
        ];

        LogColumn Column(string name, string look, string blankWidth, Func<TakeLine, string> cell) =>
            new(name, words[name], look, blankWidth) { Cell = cell };
    }
}
