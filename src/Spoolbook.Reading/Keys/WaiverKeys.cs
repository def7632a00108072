using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

static class WaiverKeys
{
    public static readonly ValueKey<string> Check = new("check", WordForms.Text, "The check's name.")
    {
        Required = true,
        Example = "counter/take-repeated",
    };
    public static readonly ValueKey<string> Take = new(
        "take",
        WordForms.Text,
        "The take it is about, as its slate; the whole roll or production if no place is written."
    )
    {
        Example = "7B/1",
    };
    public static readonly ValueKey<string> Shot = new(
        "shot",
        WordForms.Text,
        "The shot it is about, scene and letter together, with all its takes."
    )
    {
        Example = "2C",
    };
    public static readonly ValueKey<string> Roll = new("roll", WordForms.Text, "The roll it is about, in production.yaml.")
    {
        Example = "R03",
    };
    public static readonly ValueKey<string> Lot = new("lot", WordForms.Text, "The lot of raw stock it is about, with all its rolls.")
    {
        Example = "N250-A",
    };
    public static readonly ValueKey<string> Piece = new("piece", WordForms.Text, "The piece of the kit it is about, by its name there.")
    {
        Example = "Lens caps",
    };
    public static readonly ValueKey<string> Reason = new("reason", WordForms.Text, "Why the rule is broken.")
    {
        Example = "the second slate was meant",
    };
    public static readonly ValueKey<string> By = new("by", WordForms.Text, "Who answers for it, by a person's id.") { Example = "loader" };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.waiver"), [Check, Take, Shot, Roll, Lot, Piece, Reason, By]);
}
