using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of a roll.</summary>
static class RollKeys
{
    public static readonly ValueKey<string> Roll = new("roll", WordForms.Text, "The roll's name on cans and papers.") { Required = true, Example = "R03" };
    public static readonly ValueKey<string> Lot = new("lot", WordForms.Text, "The lot of raw stock that it came from.") { Example = "N250-A" };
    public static readonly ValueKey<int> Unit = new("unit", NumberForms.FromOne, "Which unit of the lot, from 1.") { Example = "3" };
    public static readonly ValueKey<string> ShortEndOf = new("short-end-of", WordForms.Text, "The roll whose short end this is.") { Example = "R02" };
    public static readonly ValueKey<Film.Footage> Length = new("length", FilmForms.Length, "Film loaded, if not the lot's full length; for a short end, what its can says.") { Example = "38+00" };
    public static readonly ValueKey<string> Body = new("body", WordForms.Text, "The camera body, by its name in the kit.") { Example = "B1" };
    public static readonly ValueKey<int> Rated = new("rated", NumberForms.FromOne, "The exposure index used; the lot's unless written.") { Example = "250" };
    public static readonly ValueKey<bool> Practice = new("practice", WordForms.YesNo, "Whether it is a dummy roll: logged, and in no account and no order.") { Example = "no" };
    public static readonly MapKey Load = new("load", LoadKeys.Table, "How it was loaded.") { Required = true, Example = "{on: 2026-10-04 09:10, by: loader, light: subdued, head: 4+00}" };
    public static readonly EntriesKey Log = new("log", LogKeys.Kinds, "What happened to it, in the order in which it happened.");
    public static readonly MapKey Unload = new("unload", UnloadKeys.Table, "How it was taken out; not written while it is in the camera.") { Example = "{on: 2026-10-04 16:45, by: loader, light: subdued, tail: 2+00}" };
    public static readonly MapKey Lab = new("lab", RollOrderKeys.Table, "What the lab must do with it.") { Example = "{process: ecn-2, push: 0}" };
    public static readonly MapsKey Accept = new("accept", WaiverKeys.Table, "Rules broken on purpose on this roll.");

    public static readonly KeyTable Table = new("a roll", [Roll, Lot, Unit, ShortEndOf, Length, Body, Rated, Practice, Load, Log, Unload, Lab, Accept]);
}

/// <summary>The keys of loading.</summary>
static class LoadKeys
{
    public static readonly ValueKey<DateTime> On = new("on", TimeForms.DateAndTime, "When it was loaded.") { Required = true, Example = "2026-10-04 09:10" };
    public static readonly ValueKey<DateOnly> Day = EntryKeys.Day;
    public static readonly ValueKey<string> By = new("by", WordForms.Text, "Who did it, by a person's id.") { Example = "loader" };
    public static readonly ValueKey<LoadingLight> Light = new("light", WordForms.Light, "The light it was done in.") { Example = "subdued" };
    public static readonly ValueKey<Film.Footage> Head = new("head", FilmForms.Length, "Film exposed and lost in loading.") { Example = "4+00" };
    public static readonly ValueKey<bool> Loops = new("loops", WordForms.Loops, "Whether the loops were seen to be set.") { Example = "set" };
    public static readonly ValueKey<bool> Plate = new("plate", WordForms.Plate, "Whether the pressure plate was closed.") { Example = "closed" };
    public static readonly ValueKey<bool> Slot = new("slot", WordForms.Slot, "Whether the filter slot behind the lens held its holder, with a filter or without.") { Example = "filled" };
    public static readonly ValueKey<Film.Speed> SpeedAfter = new("speed-after", FilmForms.Speed, "The speed set after loading at the loading speed.") { Example = "24" };

    public static readonly KeyTable Table = new("the loading of a roll", [On, Day, By, Light, Head, Loops, Plate, Slot, SpeedAfter]);
}

/// <summary>The keys of taking out.</summary>
static class UnloadKeys
{
    public static readonly ValueKey<DateTime> On = new("on", TimeForms.DateAndTime, "When it was taken out.") { Required = true, Example = "2026-10-04 16:45" };
    public static readonly ValueKey<DateOnly> Day = EntryKeys.Day;
    public static readonly ValueKey<string> By = new("by", WordForms.Text, "Who did it, by a person's id.") { Example = "loader" };
    public static readonly ValueKey<LoadingLight> Light = new("light", WordForms.Light, "The light it was done in.") { Example = "subdued" };
    public static readonly ValueKey<Film.Footage> Tail = new("tail", FilmForms.Length, "Film exposed and lost in unloading.") { Example = "2+00" };
    public static readonly ValueKey<Remainder> ShortEnd = new("short-end", WordForms.ShortEnd, "What became of film left over; kept unless it says thrown.") { Example = "kept" };

    public static readonly KeyTable Table = new("the unloading of a roll", [On, Day, By, Light, Tail, ShortEnd]);
}

/// <summary>The keys of a roll's order to the lab.</summary>
static class RollOrderKeys
{
    public static readonly ValueKey<string> Process = new("process", WordForms.Text, "The process.") { Example = "ecn-2" };
    public static readonly ValueKey<double> Push = new("push", FilmForms.Stops, "Stops to push (above zero) or pull (below).") { Example = "1" };
    public static readonly ValuesKey<string> Services = new("services", WordForms.Text, "What is wanted beside the process, by the names of the lab's services.") { Example = "[prep, scan]" };
    public static readonly ValuesKey<DeclaredEffect> Effects = new("effects", WordForms.Effect, "Effects made in the camera that the lab must leave as they are.") { Example = "[fade, double-exposure]" };
    public static readonly ValueKey<DateOnly> Sent = new("sent", TimeForms.Date, "The day on which it went to the lab.") { Example = "2026-10-06" };
    public static readonly ValueKey<bool> Send = new("send", WordForms.YesNo, "Whether it goes to the lab at all; it does unless it says no.") { Example = "yes" };
    public static readonly ValueKey<string> Notes = new("notes", WordForms.Text, "Words for the lab.") { Example = "do not correct the dissolve in the camera" };

    public static readonly KeyTable Table = new("a roll's order to the lab", [Process, Push, Services, Effects, Send, Sent, Notes]);
}

/// <summary>The keys of a waiver.</summary>
static class WaiverKeys
{
    public static readonly ValueKey<string> Check = new("check", WordForms.Text, "The check's name.") { Required = true, Example = "counter/take-repeated" };
    public static readonly ValueKey<string> Take = new("take", WordForms.Text, "The take it is about, as its slate; the whole roll or production if no place is written.") { Example = "7B/1" };
    public static readonly ValueKey<string> Shot = new("shot", WordForms.Text, "The shot it is about, scene and letter together, with all its takes.") { Example = "2C" };
    public static readonly ValueKey<string> Roll = new("roll", WordForms.Text, "The roll it is about, in production.yaml.") { Example = "R03" };
    public static readonly ValueKey<string> Lot = new("lot", WordForms.Text, "The lot of raw stock it is about, with all its rolls.") { Example = "N250-A" };
    public static readonly ValueKey<string> Piece = new("piece", WordForms.Text, "The piece of the kit it is about, by its name there.") { Example = "Lens caps" };
    public static readonly ValueKey<string> Reason = new("reason", WordForms.Text, "Why the rule is broken on purpose.") { Example = "the second slate was meant" };
    public static readonly ValueKey<string> By = new("by", WordForms.Text, "Who answers for it, by a person's id.") { Example = "loader" };

    public static readonly KeyTable Table = new("a waiver", [Check, Take, Shot, Roll, Lot, Piece, Reason, By]);
}
