using System.Collections.Immutable;
using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of everything that went out and must come back.</summary>
static class ReturnKeys
{
    public static readonly ValueKey<int> Out = new("out", NumberForms.FromZero, "How many went out; 1 unless written.") { Example = "1" };
    public static readonly ValueKey<int> Back = new("back", NumberForms.FromZero, "How many came back; not written while the kit is out.") { Example = "1" };
    public static readonly ValueKey<string> Note = new("note", WordForms.Text, "Remarks on its return.") { Example = "one left at the boathouse" };
    public static readonly ValueKey<string> Kept = new("kept", WordForms.Text, "Where it is kept: its case, and its slot there.") { Example = "filter pouch, slot 2" };
    public static readonly ValueKey<decimal> Worth = new("value", NumberForms.Money, "What one of them is worth, in the currency of the rates.") { Example = "240" };
    public static readonly ValueKey<string> Owner = new("owner", WordForms.Text, "Whose it is, where it is not the owner's of the loan.") { Example = "Film department" };
    public static readonly ValueKey<string> BorrowedBy = new("borrowed-by", WordForms.Text, "Who borrowed it, by id, where it is not the borrower of the loan.") { Example = "assistant" };
    public static readonly ValueKey<DateOnly> Due = new("due", TimeForms.Date, "The day that it must be back, where it is not the loan's.") { Example = "2026-10-07" };
    public static readonly ValueKey<string> ConditionOut = new("condition-out", WordForms.Text, "What state it went out in.") { Example = "scratch on the hood" };
    public static readonly ValueKey<string> ConditionBack = new("condition-back", WordForms.Text, "What state it came back in.") { Example = "as it went out" };

    public static readonly ImmutableArray<Key> Common = [Out, Back, Note, Kept, Worth, Owner, BorrowedBy, Due, ConditionOut, ConditionBack];
}

/// <summary>The keys of the loan: what holds for the whole kit.</summary>
static class LoanKeys
{
    public static readonly ValueKey<string> Owner = new("owner", WordForms.Text, "Whose the kit is.") { Example = "Film department" };
    public static readonly ValueKey<string> BorrowedBy = new("borrowed-by", WordForms.Text, "Who borrowed it, by id.") { Example = "assistant" };
    public static readonly ValueKey<DateOnly> On = new("on", TimeForms.Date, "The day that it went out.") { Example = "2026-10-01" };
    public static readonly ValueKey<DateOnly> Due = new("due", TimeForms.Date, "The day that it must be back.") { Example = "2026-10-07" };
    public static readonly ValueKey<DateOnly> BackOn = new("back-on", TimeForms.Date, "The day that it came back; not written while it is out.") { Example = "2026-10-06" };
    public static readonly ValuesKey<string> Care = new("care", WordForms.Text, "What the owner wants done before it goes back: free lines.") { Example = "[Ring the stores the day before]" };

    public static readonly KeyTable Table = new("the loan", [Owner, BorrowedBy, On, Due, BackOn, Care]);
}

/// <summary>The keys of a camera body.</summary>
static class BodyKeys
{
    public static readonly ValueKey<string> Body = new("body", WordForms.Text, "Its name in the log.") { Required = true, Example = "B1" };
    public static readonly ValueKey<string> What = new("what", WordForms.Text, "What it is, in words.") { Example = "Spring-wound 16 mm reflex camera" };
    public static readonly ValueKey<string> Serial = new("serial", WordForms.Text, "Its number.") { Example = "\"10437\"" };
    public static readonly ValuesKey<Film.Speed> Speeds = new("speeds", FilmForms.Speed, "The speeds engraved on its dial.") { Example = "[12, 16, 24, 32, 48, 64]" };
    public static readonly ValueKey<Film.Speed> Slowest = new("slowest", FilmForms.Speed, "The slowest speed; the lowest engraved unless written.") { Example = "12" };
    public static readonly ValueKey<Film.Speed> Fastest = new("fastest", FilmForms.Speed, "The fastest speed; the highest engraved unless written.") { Example = "64" };
    public static readonly ValueKey<Film.Ratio> Shutter = new("shutter", NumberForms.AboveZero, "The shutter's angle fully open, in degrees.") { Example = "133" };
    public static readonly MapsKey Marks = new("marks", MarkKeys.Table, "The variable shutter's marks, from open to closed.");
    public static readonly ValueKey<Film.Ratio> FinderLoss = new("finder-loss", NumberForms.Part, "The part of the light that the finder takes.") { Example = "20%" };
    public static readonly ValueKey<Film.Footage> FullWind = new("full-wind", FilmForms.Length, "Film that a full wind of the spring drives; not written for a body without a spring.") { Example = "18ft" };
    public static readonly ValueKey<SpringLeft> Spring = new("spring", WordForms.Spring, "How the spring was left when the body was put away.") { Example = "run-down" };
    public static readonly ValueKey<Film.Speed> LoadingSpeed = new("loading-speed", FilmForms.Speed, "The speed that loading is done at.") { Example = "16" };
    public static readonly ValueKey<long> CounterWraps = new("counter-wraps", NumberForms.Counter, "Frames after which the frame counter stands at zero again.") { Example = "1000" };
    public static readonly ValueKey<Film.Footage> Takes = new("takes", FilmForms.Length, "The most film that it takes.") { Example = "100ft" };

    public static readonly KeyTable Table = new(
        "a body",
        [Body, What, Serial, Speeds, Slowest, Fastest, Shutter, Marks, FinderLoss, FullWind, Spring, LoadingSpeed, CounterWraps, Takes, .. ReturnKeys.Common]);
}

/// <summary>The keys of a mark of the variable shutter.</summary>
static class MarkKeys
{
    public static readonly ValueKey<string> Mark = new("mark", WordForms.Text, "Its name.") { Required = true, Example = "half" };
    public static readonly ValueKey<Film.Ratio> Open = new("open", NumberForms.Part, "The part of the full opening that is left.") { Required = true, Example = "1/2" };
    public static readonly ValueKey<double> Stops = new("stops", FilmForms.Stops, "The stops that the trade counts for it; not written for closed.") { Example = "1" };

    public static readonly KeyTable Table = new("a shutter mark", [Mark, Open, Stops]);
}

/// <summary>The keys of a lens.</summary>
static class LensKeys
{
    public static readonly ValueKey<string> Lens = new("lens", WordForms.Text, "Its name in the log.") { Required = true, Example = "25mm" };
    public static readonly ValueKey<string> What = new("what", WordForms.Text, "What it is, in words.") { Example = "Standard prime" };
    public static readonly ValueKey<string> Serial = new("serial", WordForms.Text, "Its number.") { Example = "\"88213\"" };
    public static readonly ValueKey<Film.Ratio> Focal = new("focal", NumberForms.Millimetres, "Focal length in millimetres.") { Example = "25" };
    public static readonly ValueKey<Film.Stop> Widest = new("widest", FilmForms.Stop, "The widest stop on its ring.") { Example = "1.4" };
    public static readonly ValueKey<Film.Stop> Smallest = new("smallest", FilmForms.Stop, "The smallest stop on its ring.") { Example = "22" };
    public static readonly ValueKey<Film.Distance> Nearest = new("nearest", FilmForms.Distance, "The nearest distance that it focuses at, from the film plane.") { Example = "1.5ft" };

    public static readonly KeyTable Table = new("a lens", [Lens, What, Serial, Focal, Widest, Smallest, Nearest, .. ReturnKeys.Common]);
}

/// <summary>The keys of a filter.</summary>
static class FilterKeys
{
    public static readonly ValueKey<string> Filter = new("filter", WordForms.Text, "Its name in the log.") { Required = true, Example = "\"85\"" };
    public static readonly ValueKey<string> What = new("what", WordForms.Text, "What it is, in words.") { Example = "Daylight conversion" };
    public static readonly ValueKey<string> Serial = new("serial", WordForms.Text, "Its number, or a mark to know it by.") { Example = "ring of red tape" };
    public static readonly ValueKey<double> Stops = new("stops", FilmForms.Stops, "What it costs, in stops.") { Example = "2/3" };
    public static readonly ValueKey<int> Mireds = new("mireds", NumberForms.Mireds, "What it adds to the mireds of the light, where its name is not one that is tabled.") { Example = "112" };

    public static readonly KeyTable Table = new("a filter", [Filter, What, Serial, Stops, Mireds, .. ReturnKeys.Common]);
}

/// <summary>The keys of a light meter.</summary>
static class MeterKeys
{
    public static readonly ValueKey<string> Meter = new("meter", WordForms.Text, "Its name in the log.") { Required = true, Example = "M1" };
    public static readonly ValueKey<string> What = new("what", WordForms.Text, "What it is, in words.") { Example = "Incident meter" };
    public static readonly ValueKey<string> Serial = new("serial", WordForms.Text, "Its number.") { Example = "\"5501\"" };

    public static readonly KeyTable Table = new("a meter", [Meter, What, Serial, .. ReturnKeys.Common]);
}

/// <summary>The keys of a motor.</summary>
static class MotorKeys
{
    public static readonly ValueKey<string> Motor = new("motor", WordForms.Text, "Its name in the log.") { Required = true, Example = "E1" };
    public static readonly ValueKey<string> What = new("what", WordForms.Text, "What it is, in words.") { Example = "Electric motor" };
    public static readonly ValueKey<string> Serial = new("serial", WordForms.Text, "Its number, or a mark to know it by.") { Example = "\"E-204\"" };
    public static readonly ValuesKey<Film.Speed> Speeds = new("speeds", FilmForms.Speed, "The speeds that it runs at.") { Example = "[24]" };
    public static readonly ValueKey<bool> Sync = new("sync", WordForms.YesNo, "Whether it holds speed well enough for sound.") { Example = "no" };

    public static readonly KeyTable Table = new("a motor", [Motor, What, Serial, Speeds, Sync, .. ReturnKeys.Common]);
}

/// <summary>The keys of any other thing.</summary>
static class ItemKeys
{
    public static readonly ValueKey<string> Item = new("item", WordForms.Text, "What it is.") { Required = true, Example = "Lens caps" };
    public static readonly ValueKey<string> Serial = new("serial", WordForms.Text, "Its number, or a mark to know it by.") { Example = "white dot on each" };
    public static readonly ValueKey<bool> TakeUp = new("take-up", WordForms.YesNo, "Whether these are the empty take-up spools: a roll takes one, and leaves its own empty one.") { Example = "yes" };

    public static readonly KeyTable Table = new("an item of the kit", [Item, Serial, TakeUp, .. ReturnKeys.Common]);
}
