using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

static class UnloadKeys
{
    public static readonly ValueKey<DateTime> On = new("on", TimeForms.DateAndTime, "When it was unloaded.")
    {
        Required = true,
        Example = "2026-10-04 16:45",
    };
    public static readonly ValueKey<DateOnly> Day = EntryKeys.Day;
    public static readonly ValueKey<string> By = new("by", WordForms.Text, "Who did it, by a person's id.") { Example = "loader" };
    public static readonly ValueKey<LoadingLight> Light = new("light", WordForms.Light, "The light it was done in.")
    {
        Example = "subdued",
    };
    public static readonly ValueKey<Film.Footage> Tail = new("tail", FilmForms.Length, "Film exposed and lost in unloading.")
    {
        Example = "2+00",
    };
    public static readonly ValueKey<Remainder> ShortEnd = new(
        "short-end",
        WordForms.ShortEnd,
        "What became of film left over; kept unless it says thrown."
    )
    {
        Example = "kept",
    };
    public static readonly ValueKey<Film.Footage> Left = new(
        "left",
        FilmForms.Length,
        "Film in the short end's can as it was measured; kept unless `short-end` says thrown."
    )
    {
        Example = "38+00",
    };
    public static readonly ValueKey<string> Line = EntryKeys.Line;

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.unload"), [On, Day, By, Light, Tail, ShortEnd, Left, Line]);
}
