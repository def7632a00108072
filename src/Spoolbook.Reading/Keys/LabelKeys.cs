using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of the can labels.</summary>
static class LabelKeys
{
    public static readonly ValueKey<LabelSheet> Sheet = new(
        "sheet",
        WordForms.Labels,
        "The sheet, by its paper and how many labels it holds; cut: plain paper with lines to cut along."
    )
    {
        Example = "a4-8",
    };
    public static readonly ValueKey<int> Start = new(
        "start",
        NumberForms.FromOne,
        "The first label that is still on the sheet, counted along the rows; 1 unless written."
    )
    {
        Example = "3",
    };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.labels"), [Sheet, Start]);
}
