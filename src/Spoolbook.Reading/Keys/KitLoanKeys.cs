using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of one loan of the school's.</summary>
static class KitLoanKeys
{
    public static readonly ValueKey<string> Piece = new("piece", WordForms.Text, "The piece, by its name in the school's kit.")
    {
        Required = true,
        Example = "B1",
    };
    public static readonly ValueKey<string> To = new("to", WordForms.Text, "The production that has it: its folder, or its code.")
    {
        Required = true,
        Example = "first-year/ferry",
    };
    public static readonly ValueKey<DateOnly> Out = new("out", TimeForms.Date, "The day that it goes out.")
    {
        Required = true,
        Example = "2026-10-01",
    };
    public static readonly ValueKey<DateOnly> Back = new("back", TimeForms.Date, "The day that it must be back.")
    {
        Required = true,
        Example = "2026-10-07",
    };
    public static readonly ValueKey<DateOnly> CameBack = new(
        "came-back",
        TimeForms.Date,
        "The day that it came back; not written while it is out."
    )
    {
        Example = "2026-10-06",
    };
    public static readonly ValueKey<KitCondition> Condition = new("condition", WordForms.Condition, "How it came back.")
    {
        Example = "good",
    };
    public static readonly ValueKey<string> By = new("by", WordForms.Text, "Who took it, by a person's id.") { Example = "marit" };
    public static readonly ValuesKey<string> Missing = new("missing", WordForms.Text, "What did not come back with it.")
    {
        Example = "[rewind key]",
    };
    public static readonly ValueKey<string> Note = new("note", WordForms.Text, "Remarks.") { Example = "the hood has a dent" };

    public static readonly KeyTable Table = new(
        Sentence.Of("common.owner.kit-loan"),
        [Piece, To, Out, Back, CameBack, Condition, By, Missing, Note]
    );
}
