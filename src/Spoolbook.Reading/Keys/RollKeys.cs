using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

static class RollKeys
{
    public static readonly ValueKey<string> Roll = new("roll", WordForms.Text, "The roll's name on cans and papers.")
    {
        Required = true,
        Example = "R03",
    };
    public static readonly ValueKey<string> Lot = new("lot", WordForms.Text, "The lot of raw stock that it came from.")
    {
        Example = "N250-A",
    };
    public static readonly ValueKey<int> Unit = new("unit", NumberForms.FromOne, "Which unit of the lot, from 1.") { Example = "3" };
    public static readonly ValueKey<string> ShortEndOf = new("short-end-of", WordForms.Text, "The roll whose short end this is.")
    {
        Example = "R02",
    };
    public static readonly ValueKey<Film.Footage> Length = new(
        "length",
        FilmForms.Length,
        "Film loaded, if not the lot's full length; for a short end, what its can says."
    )
    {
        Example = "38+00",
    };
    public static readonly ValueKey<string> Body = new("body", WordForms.Text, "The camera body, by its name in the kit.")
    {
        Example = "B1",
    };
    public static readonly ValueKey<int> Rated = new("rated", NumberForms.FromOne, "The exposure index used; the lot's unless written.")
    {
        Example = "250",
    };
    public static readonly ValueKey<bool> Practice = new(
        "practice",
        WordForms.YesNo,
        "Whether it is a dummy roll: logged, and in no account and no order."
    )
    {
        Example = "no",
    };
    public static readonly MapKey Load = new("load", LoadKeys.Table, "How it was loaded.")
    {
        Required = true,
        Example = "{on: 2026-10-04 09:10, by: loader, light: subdued, head: 4+00}",
    };
    public static readonly EntriesKey Log = new("log", LogKeys.Kinds, "What happened to it, in the order in which it happened.");
    public static readonly MapKey Unload = new("unload", UnloadKeys.Table, "How it was unloaded; not written while it is in the camera.")
    {
        Example = "{on: 2026-10-04 16:45, by: loader, light: subdued, tail: 2+00}",
    };
    public static readonly MapKey Totals = new(
        "totals",
        TotalsKeys.Table,
        "The boxes at the foot of the paper sheet, as they were added up by hand; a blank one is left out."
    )
    {
        Example = "{good: 41, no-good: 42, waste: 9, short-end: 8, takes: 14}",
    };
    public static readonly MapKey Lab = new("lab", RollOrderKeys.Table, "What the lab must do with it.")
    {
        Example = "{process: ecn-2, push: 0}",
    };
    public static readonly MapsKey Accept = new("accept", WaiverKeys.Table, "Rules broken intentionally on this roll.");

    public static readonly KeyTable Table = new(
        Sentence.Of("common.owner.roll"),
        [Roll, Lot, Unit, ShortEndOf, Length, Body, Rated, Practice, Load, Log, Unload, Totals, Lab, Accept]
    );
}
