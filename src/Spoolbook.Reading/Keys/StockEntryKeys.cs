using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of the stock log's entries.</summary>
static class StockEntryKeys
{
    public static readonly ValueKey<StockTime> On = new("on", TimeForms.DayOrMoment, "When: a day, or a day and a time.")
    {
        Required = true,
        Example = "2026-10-03 08:00",
    };
    public static readonly ValueKey<string> Lot = new("lot", WordForms.Text, "The lot.") { Example = "N250-A" };
    public static readonly ValuesKey<int> Units = new("units", NumberForms.FromOne, "Units of the lot, by the numbers on their cans.")
    {
        Example = "[3, 4]",
    };
    public static readonly ValueKey<string> ShortEndOf = new(
        "short-end-of",
        WordForms.Text,
        "The roll whose short end it is, instead of lot and units."
    )
    {
        Example = "R02",
    };
    public static readonly ValueKey<string> Note = new("note", WordForms.Text, "Remarks.") { Example = "the driver has them" };
    public static readonly ValueKey<string> From = new("from", WordForms.Text, "Who gave it: another production, a store.")
    {
        Example = "the school's store",
    };
    public static readonly ValueKey<string> To = new("to", WordForms.Text, "Who got it: another production, a store.")
    {
        Example = "the school's store",
    };
    public static readonly ValueKey<decimal> Paid = new("price", NumberForms.Money, "Price paid for each; the lot's unless written.")
    {
        Example = "38.50",
    };
    public static readonly ValueKey<decimal> Got = new("price", NumberForms.Money, "Price that was paid to us for each, if any.")
    {
        Example = "38.50",
    };
    public static readonly ValueKey<Film.Footage> Off = new(
        "off",
        FilmForms.Length,
        "The end that was thrown away because it had seen light."
    )
    {
        Example = "3+00",
    };
    public static readonly ValuesKey<Film.Footage> Into = new("into", FilmForms.Length, "Film in each piece.")
    {
        Required = true,
        Example = "[20+00, 18+28]",
    };
    public static readonly ValueKey<int> Piece = new(
        "piece",
        NumberForms.FromOne,
        "Which piece of a short end that was split; all of them unless written."
    )
    {
        Example = "2",
    };
    public static readonly ValueKey<ColdStore> Cold = new("from", WordForms.Cold, "Out of what.") { Example = "fridge" };
    public static readonly ValueKey<int> Passes = new("passes", NumberForms.FromOne, "How many times; once unless written.")
    {
        Example = "1",
    };
}
