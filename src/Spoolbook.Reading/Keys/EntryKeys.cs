using System.Collections.Immutable;
using Spoolbook.Reading.Forms;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys that every entry of a log can have.</summary>
static class EntryKeys
{
    public static readonly ValueKey<TimeOnly> At = new("at", TimeForms.Clock, "The time of day.") { Example = "10:25" };
    public static readonly ValueKey<DateOnly> Day = new(
        "day",
        TimeForms.Date,
        "The shooting day that it counts for, where the rule gives another."
    )
    {
        Example = "2026-10-04",
    };
    public static readonly ValueKey<long> Counter = new(
        "counter",
        NumberForms.Counter,
        "The frame counter's reading at the entry's end, in frames."
    )
    {
        Example = "570",
    };
    public static readonly ValueKey<Film.Footage> Dial = new("dial", FilmForms.Length, "The footage dial's reading at the entry's end.")
    {
        Example = "14+00",
    };
    public static readonly ValueKey<string> Note = new("note", WordForms.Text, "Remarks.") { Example = "wind in the last seconds" };
    public static readonly ValueKey<string> Line = new(
        "line",
        WordForms.Text,
        "The line of the short form that said it: its number, and four digits of its text. Spoolbook writes it."
    )
    {
        Example = "K3-12/9c4e",
    };

    public static readonly ImmutableArray<Key> Common = [At, Day, Counter, Dial, Note, Line];
}
