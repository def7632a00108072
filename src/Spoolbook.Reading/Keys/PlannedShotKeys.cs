using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of a shot on the shot list.</summary>
static class PlannedShotKeys
{
    public static readonly ValueKey<string> Scene = new("scene", WordForms.Text, "The scene, as text.") { Required = true, Example = "7" };
    public static readonly ValueKey<string> Shot = new("shot", WordForms.Text, "The shot's letter within the scene.") { Example = "B" };
    public static readonly ValueKey<string> What = new("what", WordForms.Text, "What is to be seen.") { Example = "the lamp goes out" };
    public static readonly ValueKey<Film.Ratio> Screen = new("screen", TimeForms.Duration, "Time wanted on the screen.") { Example = "6s" };
    public static readonly ValueKey<SubjectLight> Light = new(
        "light",
        WordForms.SubjectLight,
        "The light that its takes are shot in, unless one says otherwise."
    )
    {
        Example = "daylight",
    };

    public static readonly ValueKey<int> Lamps = new(
        "lamps",
        WordForms.Lamps,
        "The mains, where tubes, street lamps or other discharge lamps on plain ballasts light its takes."
    )
    {
        Example = "50hz",
    };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.planned-shot"), [Scene, Shot, What, Screen, Light, Lamps]);
}
