using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of a lot of raw stock.</summary>
static class LotKeys
{
    public static readonly ValueKey<string> Lot = new("lot", WordForms.Text, "The production's name for it.")
    {
        Required = true,
        Example = "N250-A",
    };
    public static readonly ValueKey<string> Stock = new("stock", WordForms.Text, "The stock's name as on the can.")
    {
        Required = true,
        Example = "Colour negative 250 D",
    };
    public static readonly ValueKey<string> Emulsion = new("emulsion", WordForms.Text, "Emulsion and batch numbers as on the can.")
    {
        Example = "0412-118",
    };
    public static readonly ValueKey<int> Index = new("ei", NumberForms.FromOne, "The exposure index for the light that it is balanced for.")
    {
        Required = true,
        Example = "250",
    };
    public static readonly ValueKey<ColourBalance> Balance = new(
        "balance",
        WordForms.Balance,
        "The light that it is balanced for; none for black and white."
    )
    {
        Example = "daylight",
    };
    public static readonly MapsKey Reciprocity = new(
        "reciprocity",
        ReciprocityKeys.Table,
        "How much more exposure it needs at long times, by its maker's table."
    );
    public static readonly ValueKey<string> Process = new("process", WordForms.Text, "The process that it is made for.")
    {
        Required = true,
        Example = "ecn-2",
    };
    public static readonly ValueKey<Film.Footage> Length = new("length", FilmForms.Length, "Film in a unit.")
    {
        Required = true,
        Example = "100ft",
    };
    public static readonly ValueKey<int> Perforation = new("perforation", WordForms.Perforation, "One or two rows of perforations.")
    {
        Example = "2R",
    };
    public static readonly ValueKey<FilmWinding> Winding = new(
        "winding",
        WordForms.Winding,
        "How film with one row of perforations is wound, as on the can."
    )
    {
        Example = "B",
    };
    public static readonly ValueKey<int> Units = new("units", NumberForms.FromOne, "Units received, numbered from 1.")
    {
        Required = true,
        Example = "4",
    };
    public static readonly ValueKey<decimal> UnitPrice = new(
        "unit-price",
        NumberForms.Money,
        "Price of a unit, in the currency of the rates."
    )
    {
        Example = "38.50",
    };
    public static readonly ValueKey<DateOnly> Expires = new("expires", TimeForms.Expiry, "The month or day printed on the can.")
    {
        Example = "2027-06",
    };
    public static readonly ValueKey<bool> Practice = new(
        "practice",
        WordForms.YesNo,
        "Whether it is for practice, and counted by itself."
    )
    {
        Example = "no",
    };
    public static readonly ValuesKey<string> Handling = new("handling", WordForms.Text, "How it was stored and carried: free lines.")
    {
        Example = "[cooled until the day before]",
    };

    public static readonly KeyTable Table = new(
        Sentence.Of("common.owner.lot"),
        [
            Lot,
            Stock,
            Emulsion,
            Index,
            Balance,
            Reciprocity,
            Process,
            Length,
            Perforation,
            Winding,
            Units,
            UnitPrice,
            Expires,
            Practice,
            Handling,
        ]
    );
}
