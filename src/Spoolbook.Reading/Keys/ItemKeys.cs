using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of kit that has no kind of its own.</summary>
static class ItemKeys
{
    public static readonly ValueKey<string> Item = new("item", WordForms.Text, "What it is.") { Required = true, Example = "Lens caps" };
    public static readonly ValueKey<string> Serial = new("serial", WordForms.Text, "Its number, or a mark to know it by.")
    {
        Example = "white dot on each",
    };
    public static readonly ValueKey<bool> TakeUp = new(
        "take-up",
        WordForms.YesNo,
        "Whether these are the empty take-up spools: a roll takes one, and leaves its own empty one."
    )
    {
        Example = "yes",
    };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.kit-item"), [Item, Serial, TakeUp, .. ReturnKeys.Common]);
}
