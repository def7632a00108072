using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

static class FilterKeys
{
    public static readonly ValueKey<string> Filter = new("filter", WordForms.Text, "Its name in the log.")
    {
        Required = true,
        Example = "\"85\"",
    };
    public static readonly ValueKey<string> What = new("what", WordForms.Text, "What it is, in words.") { Example = "Daylight conversion" };
    public static readonly ValueKey<string> Serial = new("serial", WordForms.Text, "Its number, or a mark to know it by.")
    {
        Example = "ring of red tape",
    };
    public static readonly ValueKey<double> Stops = new("stops", FilmForms.Stops, "What it costs, in stops.") { Example = "2/3" };
    public static readonly ValueKey<int> Mireds = new(
        "mireds",
        NumberForms.Mireds,
        "What it adds to the mireds of the light, where its name is not one that is tabled."
    )
    {
        Example = "112",
    };

    public static readonly KeyTable Table = new(
        Sentence.Of("common.owner.filter"),
        [Filter, What, Serial, Stops, Mireds, .. ReturnKeys.Common]
    );
}
