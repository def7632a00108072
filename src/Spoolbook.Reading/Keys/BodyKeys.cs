using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

static class BodyKeys
{
    public static readonly ValueKey<string> Body = new("body", WordForms.Text, "Its name in the log.") { Required = true, Example = "B1" };
    public static readonly ValueKey<string> What = new("what", WordForms.Text, "What it is, in words.")
    {
        Example = "Spring-wound 16 mm reflex camera",
    };
    public static readonly ValueKey<string> Serial = new("serial", WordForms.Text, "Its number.") { Example = "\"10437\"" };
    public static readonly ValuesKey<Film.Speed> Speeds = new("speeds", FilmForms.Speed, "The speeds engraved on its dial.")
    {
        Example = "[12, 16, 24, 32, 48, 64]",
    };
    public static readonly ValueKey<Film.Speed> Slowest = new(
        "slowest",
        FilmForms.Speed,
        "The slowest speed; the lowest engraved unless written."
    )
    {
        Example = "12",
    };
    public static readonly ValueKey<Film.Speed> Fastest = new(
        "fastest",
        FilmForms.Speed,
        "The fastest speed; the highest engraved unless written."
    )
    {
        Example = "64",
    };
    public static readonly ValueKey<Film.Ratio> Shutter = new(
        "shutter",
        NumberForms.AboveZero,
        "The shutter's angle fully open, in degrees."
    )
    {
        Example = "133",
    };
    public static readonly MapsKey Marks = new("marks", MarkKeys.Table, "The variable shutter's marks, from open to closed.");
    public static readonly ValueKey<Film.Ratio> FinderLoss = new(
        "finder-loss",
        NumberForms.Part,
        "The part of the light that the finder takes."
    )
    {
        Example = "20%",
    };
    public static readonly ValueKey<Film.Footage> FullWind = new(
        "full-wind",
        FilmForms.Length,
        "Film that a full wind of the spring drives; not written for a body without a spring."
    )
    {
        Example = "18ft",
    };
    public static readonly ValueKey<SpringLeft> Spring = new(
        "spring",
        WordForms.Spring,
        "How the spring was left when the body was put away."
    )
    {
        Example = "run-down",
    };
    public static readonly ValueKey<Film.Speed> LoadingSpeed = new("loading-speed", FilmForms.Speed, "The speed that loading is done at.")
    {
        Example = "16",
    };
    public static readonly ValueKey<long> CounterWraps = new(
        "counter-wraps",
        NumberForms.Counter,
        "Frames after which the frame counter is at zero again."
    )
    {
        Example = "1000",
    };
    public static readonly ValueKey<int> Sprockets = new(
        "sprockets",
        WordForms.Sprockets,
        "Whether its sprockets and claw have teeth on one side or on both."
    )
    {
        Example = "one-side",
    };
    public static readonly ValueKey<FilmWinding> Winding = new(
        "winding",
        WordForms.Winding,
        "Which winding it takes of film with one row of perforations."
    )
    {
        Example = "B",
    };
    public static readonly ValuesKey<string> Turret = new(
        "turret",
        WordForms.Text,
        "The lenses on its turret, hole by hole, by their names in the kit."
    )
    {
        Example = "[25mm, 10mm, 75mm]",
    };
    public static readonly ValueKey<Film.Footage> Takes = new("takes", FilmForms.Length, "The most film that it takes.")
    {
        Example = "100ft",
    };

    public static readonly KeyTable Table = new(
        Sentence.Of("common.owner.body"),
        [
            Body,
            What,
            Serial,
            Speeds,
            Slowest,
            Fastest,
            Shutter,
            Marks,
            FinderLoss,
            FullWind,
            Spring,
            LoadingSpeed,
            CounterWraps,
            Takes,
            Turret,
            Sprockets,
            Winding,
            .. ReturnKeys.Common,
        ]
    );
}
