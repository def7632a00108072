using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

static class TakeKeys
{
    public static readonly ValueKey<string> Scene = new("scene", WordForms.Text, "The scene, as text.") { Required = true, Example = "7" };
    public static readonly ValueKey<string> Shot = new("shot", WordForms.Text, "The shot's letter within the scene.") { Example = "B" };
    public static readonly ValueKey<int> Number = new("take", NumberForms.FromOne, "The take's number within the shot, from 1.")
    {
        Required = true,
        Example = "1",
    };
    public static readonly ValueKey<Film.Footage> From = new(
        "from",
        FilmForms.Length,
        "Where it starts; where the film is unless written."
    )
    {
        Example = "10+00",
    };
    public static readonly ValueKey<Film.Footage> To = new("to", FilmForms.Length, "Where it ends.") { Example = "14+10" };
    public static readonly ValueKey<Film.Footage> Frames = new("frames", FilmForms.Frames, "Its length, instead of `to`.")
    {
        Example = "96fr",
    };
    public static readonly ValueKey<Film.Speed> Speed = new("speed", FilmForms.Speed, "Frames a second; as last set unless written.")
    {
        Example = "24",
    };
    public static readonly ValueKey<string> Lens = new("lens", WordForms.Text, "The lens, by its name in the kit.") { Example = "25mm" };
    public static readonly ValueKey<Film.Stop> Stop = new("stop", FilmForms.Stop, "The stop set on the lens.") { Example = "5.6" };
    public static readonly ValueKey<Film.Stop> Reading = new(
        "reading",
        FilmForms.Stop,
        "The stop that the meter asked for at this speed, shutter open, no filter."
    )
    {
        Example = "5.6",
    };
    public static readonly ValueKey<string> Meter = new("meter", WordForms.Text, "The meter that gave the reading, by its name in the kit.")
    {
        Example = "M1",
    };
    public static readonly ValueKey<Film.ExposureTime> MeteredAt = new(
        "metered-at",
        TimeForms.Exposure,
        "The exposure time that the meter was set to."
    )
    {
        Example = "1/80",
    };
    public static readonly ValuesKey<string> Filter = new(
        "filter",
        WordForms.Text,
        "Filters in the light's way, by their names in the kit; one or a list."
    )
    {
        Example = "\"85\"",
    };
    public static readonly ValueKey<string> Shutter = new(
        "shutter",
        WordForms.Text,
        "A mark of the body's variable shutter, or the part that is open: `3/4`, `0.75`, `75%`."
    )
    {
        Example = "half",
    };
    public static readonly ValueKey<SubjectLight> Light = new(
        "light",
        WordForms.SubjectLight,
        "The light that the subject stood in, if the shot list does not say; mixed where nothing is right for it."
    )
    {
        Example = "daylight",
    };
    public static readonly ValueKey<int> Lamps = new(
        "lamps",
        WordForms.Lamps,
        "The mains, where tubes, street lamps or other discharge lamps on plain ballasts lit it and the shot list does not say."
    )
    {
        Example = "50hz",
    };
    public static readonly ValueKey<int> Rated = new(
        "rated",
        NumberForms.FromOne,
        "The exposure index that the meter was set to, if not the roll's."
    )
    {
        Example = "160",
    };
    public static readonly ValueKey<double> Exposed = new("exposed", FilmForms.Stops, "Stops from normal that are meant.")
    {
        Example = "-1",
    };
    public static readonly ValueKey<Film.Distance> Focus = new("focus", FilmForms.Distance, "Focus, from the film plane.")
    {
        Example = "6ft",
    };
    public static readonly ValuesKey<Film.Distance> Measured = new(
        "measured",
        FilmForms.Distance,
        "The subject's distance by the tape, from the film plane; nearest and farthest of one that moves."
    )
    {
        Example = "[6ft, 9ft]",
    };
    public static readonly ValueKey<Mark> Mark = new("mark", WordForms.Mark, "What the sheet says of the take.")
    {
        Required = true,
        Example = "good",
    };
    public static readonly ValueKey<Film.Footage> FadeIn = new(
        "fade-in",
        FilmForms.Frames,
        "Length of a fade in at its start, by the variable shutter."
    )
    {
        Example = "48fr",
    };
    public static readonly ValueKey<Film.Footage> FadeOut = new(
        "fade-out",
        FilmForms.Frames,
        "Length of a fade out at its end, by the variable shutter."
    )
    {
        Example = "48fr",
    };
    public static readonly ValueKey<int> SingleFrame = new(
        "single-frame",
        NumberForms.SingleFrames,
        "Frames exposed at each press in single-frame work."
    )
    {
        Example = "twos",
    };
    public static readonly ValueKey<Film.Ratio> Interval = new("interval", TimeForms.Duration, "Time between exposures in time-lapse.")
    {
        Example = "5s",
    };
    public static readonly ValueKey<Film.Ratio> Timed = new(
        "timed",
        TimeForms.Duration,
        "How long the shutter was held open for each frame."
    )
    {
        Example = "2s",
    };
    public static readonly ValueKey<double> Reciprocity = new(
        "reciprocity",
        FilmForms.Stops,
        "Stops given beside the reading for the stock's reciprocity failure."
    )
    {
        Example = "2/3",
    };
    public static readonly ValueKey<bool> Sync = new("sync", WordForms.YesNo, "Whether sound was recorded in sync.") { Example = "yes" };
    public static readonly ValueKey<bool> Mute = new("mute", WordForms.YesNo, "Whether no sound was recorded at all, not even as a guide.")
    {
        Example = "yes",
    };
    public static readonly ValueKey<string> SoundRoll = new(
        "sound-roll",
        WordForms.Text,
        "The sound roll or card that its sound is on; for sync takes, as on the take before unless written."
    )
    {
        Example = "S1",
    };
    public static readonly ValueKey<SlatePlace> Slate = new("slate", WordForms.Slate, "Where its slate is.") { Example = "tail" };
    public static readonly ValueKey<bool> SecondSticks = new(
        "second-sticks",
        WordForms.YesNo,
        "Whether the sticks were clapped a second time, which is the one that counts."
    )
    {
        Example = "yes",
    };
    public static readonly ValueKey<string> Motor = new("motor", WordForms.Text, "The motor, by its name in the kit; the spring if none.")
    {
        Example = "E1",
    };
    public static readonly ValueKey<bool> Wound = new("wound", WordForms.YesNo, "Whether the spring was wound while the take ran.")
    {
        Example = "no",
    };
    public static readonly ValueKey<bool> HandCranked = new(
        "hand-cranked",
        WordForms.YesNo,
        "Whether the camera was cranked by hand, so that speed and exposure vary."
    )
    {
        Example = "no",
    };
    public static readonly ValueKey<bool> Slot = new(
        "slot",
        WordForms.Slot,
        "Whether the filter slot behind the lens held its holder, with a filter or without."
    )
    {
        Example = "filled",
    };
    public static readonly ValueKey<bool> Finder = new("finder", WordForms.Finder, "Whether the finder was closed while no eye was at it.")
    {
        Example = "closed",
    };
    public static readonly ValueKey<string> By = new("by", WordForms.Text, "Who kept the camera, by a person's id, if not who loaded.")
    {
        Example = "loader",
    };
    public static readonly ValueKey<DateOnly> On = new("on", TimeForms.Date, "The day, if not that of the entry before it.")
    {
        Example = "2026-10-05",
    };

    public static readonly KeyTable Table = new(
        Sentence.Of("common.owner.take"),
        [
            Scene,
            Shot,
            Number,
            From,
            To,
            Frames,
            Speed,
            Lens,
            Stop,
            Reading,
            Meter,
            MeteredAt,
            Filter,
            Shutter,
            Light,
            Lamps,
            Rated,
            Exposed,
            Focus,
            Measured,
            Mark,
            FadeIn,
            FadeOut,
            SingleFrame,
            Interval,
            Timed,
            Reciprocity,
            Sync,
            Mute,
            SoundRoll,
            Slate,
            SecondSticks,
            Motor,
            Wound,
            HandCranked,
            Slot,
            Finder,
            By,
            On,
            .. EntryKeys.Common,
        ]
    )
    {
        Either = [To, Frames],
    };
}
