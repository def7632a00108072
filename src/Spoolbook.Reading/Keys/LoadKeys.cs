using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

static class LoadKeys
{
    public static readonly ValueKey<DateTime> On = new("on", TimeForms.DateAndTime, "When it was loaded.")
    {
        Required = true,
        Example = "2026-10-04 09:10",
    };
    public static readonly ValueKey<DateOnly> Day = EntryKeys.Day;
    public static readonly ValueKey<string> By = new("by", WordForms.Text, "Who did it, by a person's id.") { Example = "loader" };
    public static readonly ValueKey<LoadingLight> Light = new("light", WordForms.Light, "The light it was done in.")
    {
        Example = "subdued",
    };
    public static readonly ValueKey<Film.Footage> Head = new("head", FilmForms.Length, "Film exposed and lost in loading.")
    {
        Example = "4+00",
    };
    public static readonly ValueKey<bool> Loops = new("loops", WordForms.Loops, "Whether the loops were seen to be set.")
    {
        Example = "set",
    };
    public static readonly ValueKey<bool> Plate = new("plate", WordForms.Plate, "Whether the pressure plate was closed.")
    {
        Example = "closed",
    };
    public static readonly ValueKey<bool> Slot = new(
        "slot",
        WordForms.Slot,
        "Whether the filter slot behind the lens held its holder, with a filter or without."
    )
    {
        Example = "filled",
    };
    public static readonly ValueKey<bool> Ready = new(
        "ready",
        WordForms.Ready,
        "The ready list, ticked: gate, loops, plate, slot, cut-off end, run test; none where nobody looked."
    )
    {
        Example = "all",
    };
    public static readonly ValuesKey<ReadyPoint> Except = new(
        "except",
        WordForms.ReadyPoint,
        "The points of the ready list that were not in order."
    )
    {
        Example = "[gate]",
    };
    public static readonly ValueKey<Film.Speed> SpeedAfter = new(
        "speed-after",
        FilmForms.Speed,
        "The speed set after loading at the loading speed."
    )
    {
        Example = "24",
    };
    public static readonly ValueKey<string> Line = EntryKeys.Line;

    public static readonly KeyTable Table = new(
        Sentence.Of("common.owner.load"),
        [On, Day, By, Light, Head, Loops, Plate, Slot, Ready, Except, SpeedAfter, Line]
    );
}
