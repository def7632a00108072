using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

static class LensKeys
{
    public static readonly ValueKey<string> Lens = new("lens", WordForms.Text, "Its name in the log.")
    {
        Required = true,
        Example = "25mm",
    };
    public static readonly ValueKey<string> What = new("what", WordForms.Text, "What it is, in words.") { Example = "Standard prime" };
    public static readonly ValueKey<string> Serial = new("serial", WordForms.Text, "Its number.") { Example = "\"88213\"" };
    public static readonly ValueKey<Film.Ratio> Focal = new("focal", NumberForms.Millimetres, "Focal length in millimetres.")
    {
        Example = "25",
    };
    public static readonly ValueKey<Film.Stop> Widest = new("widest", FilmForms.Stop, "The widest stop on its ring.") { Example = "1.4" };
    public static readonly ValueKey<Film.Stop> Smallest = new("smallest", FilmForms.Stop, "The smallest stop on its ring.")
    {
        Example = "22",
    };
    public static readonly ValueKey<Film.Distance> Nearest = new(
        "nearest",
        FilmForms.Distance,
        "The nearest distance that it focuses at, from the film plane."
    )
    {
        Example = "1.5ft",
    };

    public static readonly ValueKey<LensMadeFor> MadeFor = new(
        "made-for",
        WordForms.MadeFor,
        "Whether it was made for a prism behind it or for air; the two share a thread."
    )
    {
        Example = "prism",
    };

    public static readonly KeyTable Table = new(
        Sentence.Of("common.owner.lens"),
        [Lens, What, Serial, Focal, Widest, Smallest, Nearest, MadeFor, .. ReturnKeys.Common]
    );
}
