using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

static class TotalsKeys
{
    public static readonly ValueKey<SheetLength> Good = Box(
        "good",
        Sentence.Of("length/totals-differ.value.good"),
        "The box G: good takes, added up by hand.",
        "41"
    );
    public static readonly ValueKey<SheetLength> Hold = Box(
        "hold",
        Sentence.Of("length/totals-differ.value.hold"),
        "The box H: hold takes.",
        "12"
    );
    public static readonly ValueKey<SheetLength> NoGood = Box(
        "no-good",
        Sentence.Of("length/totals-differ.value.no-good"),
        "The box NG: takes that are no good.",
        "30"
    );
    public static readonly ValueKey<SheetLength> Waste = Box(
        "waste",
        Sentence.Of("length/totals-differ.value.waste"),
        "The box W: head, tail, tests, run-offs and gaps.",
        "9"
    );
    public static readonly ValueKey<SheetLength> ShortEnd = Box(
        "short-end",
        Sentence.Of("length/totals-differ.value.short-end"),
        "The box SE: film left over.",
        "8"
    );
    public static readonly ValueKey<SheetLength> Loaded = Box(
        "loaded",
        Sentence.Of("length/totals-differ.value.loaded"),
        "The total of the boxes: what was loaded.",
        "100"
    );
    public static readonly ValueKey<int> Takes = new(
        "takes",
        NumberForms.FromZero with
        {
            Box = Sentence.Of("length/totals-differ.value.takes"),
        },
        "How many takes are on the sheet, tests among them."
    )
    {
        Example = "14",
    };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.totals"), [Good, Hold, NoGood, Waste, ShortEnd, Loaded, Takes])
    {
        AlsoCalled = [("G", Good), ("H", Hold), ("NG", NoGood), ("W", Waste), ("SE", ShortEnd), ("total", Loaded)],
    };

    static ValueKey<SheetLength> Box(string name, Sentence box, string says, string example) =>
        new(name, FilmForms.Box with { Box = box }, says) { Example = example };
}
