using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of a mark on the variable shutter.</summary>
static class MarkKeys
{
    public static readonly ValueKey<string> Mark = new("mark", WordForms.Text, "Its name.") { Required = true, Example = "half" };
    public static readonly ValueKey<Film.Ratio> Open = new("open", NumberForms.Part, "The part of the full opening that is left.")
    {
        Required = true,
        Example = "1/2",
    };
    public static readonly ValueKey<double> Stops = new(
        "stops",
        FilmForms.Stops,
        "The stops that the trade counts for it; those of its opening unless written, and not written for closed."
    )
    {
        Example = "1",
    };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.shutter-mark"), [Mark, Open, Stops]);
}
