using System.Collections.Immutable;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Logs;

/// <summary>A column of the log, which the camera report fills and the log sheet leaves to a hand.</summary>
/// <param name="Name">What the words files call its head.</param>
/// <param name="Head">What is printed over it.</param>
/// <param name="Look">How the report sets it, in classes of the vocabulary.</param>
/// <param name="BlankWidth">Its width on the log sheet; empty where it takes the rest.</param>
public sealed record LogColumn(string Name, string Head, string Look, string BlankWidth)
{
    const string Figure = "num nowrap",
        Word = "nowrap",
        Rest = "rest";

    // Worked out of the others: nobody writes it down on set.
    const string NotOnTheSheet = "-";

    /// <summary>What it says of a take.</summary>
    internal Func<TakeLine, string> Cell { get; private init; } = _ => "";

    // Whether it is for a hand alone: an editor looks for a take by its footage.
    bool IsOnSheetOnly { get; init; }

    // Whether a take has something for it that a report without the column would lack; null for a column that is always there.
    Func<Take, bool>? IsSaidOf { get; init; }

    /// <summary>The columns of a report: those that its takes have something for.</summary>
    /// <param name="wound">Whether the spring was wound between takes.</param>
    /// <param name="withRemarks">Whether short remarks have a column; all of them have lines of their own otherwise.</param>
    internal static ImmutableArray<LogColumn> OfReport(Translations words, IReadOnlyCollection<Take> takes, bool wound, bool withRemarks) =>
        [
            .. All(words, withSound: true, null)
                .Where(c => !c.IsOnSheetOnly)
                .Where(c => c.IsSaidOf is not { } said || takes.Any(said) || (wound && c.Name == "wind"))
                .Where(c => withRemarks || c.Name != "remarks"),
        ];

    /// <summary>The columns of a sheet to fill in by hand.</summary>
    /// <param name="withSound">Whether to have a column for the sound.</param>
    /// <param name="reading">What is read off the camera at the end of a take, by the name of its column; null for nothing.</param>
    internal static ImmutableArray<LogColumn> OfSheet(Translations words, bool withSound, string? reading) =>
        [.. All(words, withSound, reading).Where(c => c.BlankWidth != NotOnTheSheet && (withSound || c.Name != "sound"))];

    // In their order: the number of the line and its mark first, what else there is to say of it last.
    static ImmutableArray<LogColumn> All(Translations words, bool withSound, string? reading)
    {
        // With one column more, the others give way: the remarks need the room. With two, so do the figures
        // of the lens, and slate and footage once more.
        string Wide(string width, string narrow) => withSound || reading is not null ? narrow : width;
        string Set(string width, string narrow) => withSound && reading is not null ? narrow : width;
        string Roomy(string width, string narrow, string narrowest) => withSound && reading is not null ? narrowest : Wide(width, narrow);
        return
        [
            Column("number", Figure, "7mm", line => PaperFormat.Number(line.Layer.Index + 1)),
            Column("slate", Word, Roomy("17mm", "15mm", "13mm"), line => line.Take.Slate),
            Column("mark", Word, "9mm", line => line.Format.Mark(line.Take.Mark.Value)),
            Column("from", Figure, Roomy("14mm", "13mm", "12mm"), line => line.Format.Length(line.Layer.Span.From)),
            Column("to", Figure, Roomy("14mm", "13mm", "12mm"), line => line.Format.Length(line.Layer.Span.To)),
            .. reading is null ? (ImmutableArray<LogColumn>)[] : [Column(reading, Figure, "11mm", _ => "") with { IsOnSheetOnly = true }],
            Column("length", Figure, NotOnTheSheet, line => line.Format.LengthOf(line.Layer.Span.From, line.Layer.Span.To)),
            Column("seconds", Figure, NotOnTheSheet, line =>
                line.IsTimed ? line.Format.Seconds(line.Layer.Span.Length.Seconds(line.Take.Speed)) : PaperFormat.Dash
            ),
            Column("speed", Figure, Wide("9mm", "8mm"), line =>
                line.IsTimed ? line.Format.AsWritten(line.Take.Speed) : words["single-frame-short"]
            ),
            Column("lens", Word, Set("13mm", "12mm"), line => PaperFormat.OrDash(line.Take.Lens)) with
            {
                IsSaidOf = t => t.Lens is not null,
            },
            Column("stop", Figure, Set("11mm", "10mm"), line => line.Format.AsWritten(line.Take.Stop)),
            Column("meter", Figure, Set("11mm", "10mm"), line => line.Format.AsWritten(line.Take.Reading)) with
            {
                IsSaidOf = t => t.Reading is not null,
            },
            Column("filter", Word, Set("12mm", "10mm"), line => line.Filters) with
            {
                IsSaidOf = t => t.Filters.Length > 0,
            },
            Column("focus", Figure, Set("12mm", "11mm"), line => line.Format.Focus(line.Take.Focus?.Value)) with
            {
                IsSaidOf = t => t.Focus is not null,
            },
            Column("time", Figure, "10mm", line => line.Take.At is { } at ? PaperFormat.Time(at.Value) : PaperFormat.Dash) with
            {
                IsSaidOf = t => t.At is not null,
            },
            Column("wind", Word, "9mm", line => line.Drive) with
            {
                IsSaidOf = t => t.Motor is not null,
            },
            Column("sound", Word, Set("12mm", "10mm"), line => line.Sound) with
            {
                IsSaidOf = t => t.SaysSound,
            },
            Column("remarks", Rest, "", line => line.Remarks),
        ];

        LogColumn Column(string name, string look, string blankWidth, Func<TakeLine, string> cell) =>
            new(name, words[name], look, blankWidth) { Cell = cell };
    }
}
