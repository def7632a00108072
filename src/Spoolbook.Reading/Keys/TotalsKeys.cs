using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

static class TotalsKeys
{
    public static readonly ValueKey<SheetLength> Good = Box("good", "The box G: good takes, added up by hand.", "41");
    public static readonly ValueKey<SheetLength> Hold = Box("hold", "The box H: hold takes.", "12");
    public static readonly ValueKey<SheetLength> NoGood = Box("no-good", "The box NG: takes that are no good.", "30");
    public static readonly ValueKey<SheetLength> Waste = Box("waste", "The box W: head, tail, tests, run-offs and gaps.", "9");
    public static readonly ValueKey<SheetLength> ShortEnd = Box("short-end", "The box SE: film left over.", "8");
    public static readonly ValueKey<SheetLength> Loaded = Box("loaded", "The total of the boxes: what was loaded.", "100");
    public static readonly ValueKey<int> Takes = new("takes", NumberForms.FromZero, "How many takes are on the sheet, tests among them.")
    {
        Example = "14",
    };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.totals"), [Good, Hold, NoGood, Waste, ShortEnd, Loaded, Takes]);

    static ValueKey<SheetLength> Box(string name, string says, string example) => new(name, FilmForms.Box, says) { Example = example };
}
