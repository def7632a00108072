using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of the price of one process.</summary>
static class ProcessRateKeys
{
    public static readonly ValueKey<string> Process = new("process", WordForms.Text, "The process.") { Required = true, Example = "ecn-2" };
    public static readonly ValueKey<decimal> Foot = new("foot", NumberForms.Money, "Price of a foot.") { Example = "0.32" };
    public static readonly ValueKey<decimal> Metre = new("metre", NumberForms.Money, "Price of a metre; instead of `foot`.")
    {
        Example = "1.05",
    };
    public static readonly ValueKey<decimal> Minimum = new(
        "minimum",
        NumberForms.Money,
        "The least that is charged, for a roll or as `minimum-per` says."
    )
    {
        Example = "25",
    };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.process-rate"), [Process, Foot, Metre, Minimum])
    {
        Either = [Foot, Metre],
    };
}
