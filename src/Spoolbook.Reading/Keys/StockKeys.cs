using System.Collections.Immutable;
using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of a lot of raw stock.</summary>
static class LotKeys
{
    public static readonly ValueKey<string> Lot = new("lot", WordForms.Text, "The production's name for it.") { Required = true, Example = "N250-A" };
    public static readonly ValueKey<string> Stock = new("stock", WordForms.Text, "The stock's name as on the can.") { Required = true, Example = "Colour negative 250 D" };
    public static readonly ValueKey<string> Emulsion = new("emulsion", WordForms.Text, "Emulsion and batch numbers as on the can.") { Example = "0412-118" };
    public static readonly ValueKey<int> Index = new("ei", NumberForms.FromOne, "The exposure index for the light that it is balanced for.") { Required = true, Example = "250" };
    public static readonly ValueKey<ColourBalance> Balance = new("balance", WordForms.Balance, "The light that it is balanced for; none for black and white.") { Example = "daylight" };
    public static readonly MapsKey Reciprocity = new("reciprocity", ReciprocityKeys.Table, "How much more exposure it needs at long times, by its maker's table.");
    public static readonly ValueKey<string> Process = new("process", WordForms.Text, "The process that it is made for.") { Required = true, Example = "ecn-2" };
    public static readonly ValueKey<Film.Footage> Length = new("length", FilmForms.Length, "Film in a unit.") { Required = true, Example = "100ft" };
    public static readonly ValueKey<int> Units = new("units", NumberForms.FromOne, "Units received, numbered from 1.") { Required = true, Example = "4" };
    public static readonly ValueKey<decimal> UnitPrice = new("unit-price", NumberForms.Money, "Price of a unit, in the currency of the rates.") { Example = "38.50" };
    public static readonly ValueKey<DateOnly> Expires = new("expires", TimeForms.Expiry, "The month or day printed on the can.") { Example = "2027-06" };
    public static readonly ValueKey<bool> Practice = new("practice", WordForms.YesNo, "Whether it is bought for practice and counted apart.") { Example = "no" };
    public static readonly ValuesKey<string> Handling = new("handling", WordForms.Text, "How it was stored and carried: free lines.") { Example = "[cooled until the day before]" };

    public static readonly KeyTable Table = new("a lot", [Lot, Stock, Emulsion, Index, Balance, Reciprocity, Process, Length, Units, UnitPrice, Expires, Practice, Handling]);
}

/// <summary>The keys of a line of a stock's reciprocity table.</summary>
static class ReciprocityKeys
{
    public static readonly ValueKey<Film.ExposureTime> Time = new("time", TimeForms.Exposure, "The exposure time.") { Required = true, Example = "10s" };
    public static readonly ValueKey<double> Stops = new("stops", FilmForms.StopsMore, "The stops to open by at that time.") { Required = true, Example = "2/3" };

    public static readonly KeyTable Table = new("a line of a reciprocity table", [Time, Stops]);
}

/// <summary>The keys that entries of the stock log have.</summary>
static class StockEntryKeys
{
    public static readonly ValueKey<StockTime> On = new("on", TimeForms.DayOrMoment, "When: a day, or a day and a time.") { Required = true, Example = "2026-10-03 08:00" };
    public static readonly ValueKey<string> Lot = new("lot", WordForms.Text, "The lot.") { Example = "N250-A" };
    public static readonly ValuesKey<int> Units = new("units", NumberForms.FromOne, "Units of the lot, by the numbers on their cans.") { Example = "[3, 4]" };
    public static readonly ValueKey<string> ShortEndOf = new("short-end-of", WordForms.Text, "The roll whose short end it is, instead of lot and units.") { Example = "R02" };
    public static readonly ValueKey<string> Note = new("note", WordForms.Text, "Remarks.") { Example = "the driver has them" };
    public static readonly ValueKey<string> From = new("from", WordForms.Text, "Who gave it: another production, a store.") { Example = "the school's store" };
    public static readonly ValueKey<string> To = new("to", WordForms.Text, "Who got it: another production, a store.") { Example = "the school's store" };
    public static readonly ValueKey<decimal> Paid = new("price", NumberForms.Money, "Price paid for each; the lot's unless written.") { Example = "38.50" };
    public static readonly ValueKey<decimal> Got = new("price", NumberForms.Money, "Price that was paid to us for each, if any.") { Example = "38.50" };
    public static readonly ValueKey<Film.Footage> Off = new("off", FilmForms.Length, "The end that was thrown away because it had seen light.") { Example = "3+00" };
    public static readonly ValueKey<ColdStore> Cold = new("from", WordForms.Cold, "Out of what.") { Example = "fridge" };
    public static readonly ValueKey<int> Passes = new("passes", NumberForms.FromOne, "How many times; once unless written.") { Example = "1" };
}

/// <summary>The entries of the stock log.</summary>
static class StockLogKeys
{
    public static readonly EntryKind Came = new("came", Table("units that came", [StockEntryKeys.From, StockEntryKeys.Paid]), EntryShort.None, "Units that came after the first delivery, or came back.");
    public static readonly EntryKind SentAway = new("sent-away", Table("stock sent away", [StockEntryKeys.To, StockEntryKeys.Got]), EntryShort.None, "Given to another production or back to a store.");
    public static readonly EntryKind Lost = new("lost", Table("stock lost", []), EntryShort.None, "Nobody can find it.");
    public static readonly EntryKind Damaged = new("damaged", Table("stock damaged", []), EntryShort.None, "It cannot be used any more.");
    public static readonly EntryKind Recanned = new("recanned", Table("a re-can", [StockEntryKeys.Off]), EntryShort.None, "Opened or loaded, and canned again unexposed.");
    public static readonly EntryKind OutOfCold = new("out-of-cold", Table("stock taken out of the cold", [StockEntryKeys.Cold]), EntryShort.None, "Taken out to warm up before it is opened.");
    public static readonly EntryKind IntoCold = new("into-cold", Table("stock put into the cold", []), EntryShort.None, "Put into the fridge or the freezer, or back.");
    public static readonly EntryKind XRayed = new("x-rayed", Table("stock X-rayed", [StockEntryKeys.Passes]), EntryShort.None, "It went through an X-ray machine, exposed or not.");

    public static readonly ImmutableArray<EntryKind> Kinds = [Came, SentAway, Lost, Damaged, Recanned, OutOfCold, IntoCold, XRayed];

    static KeyTable Table(string owner, ImmutableArray<Key> own) =>
        new(owner, [StockEntryKeys.On, StockEntryKeys.Lot, StockEntryKeys.Units, StockEntryKeys.ShortEndOf, .. own, StockEntryKeys.Note])
        {
            Either = [StockEntryKeys.Lot, StockEntryKeys.ShortEndOf],
        };
}
