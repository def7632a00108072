using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

static class RunOffKeys
{
    public static readonly ValueKey<Film.Footage> To = new("to", FilmForms.Length, "Where the film is after it.")
    {
        Required = true,
        Example = "100+00",
    };
    public static readonly ValueKey<bool> Lens = new("lens", WordForms.Capped, "Whether the lens was capped.") { Example = "capped" };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.run-off"), [To, Lens, .. EntryKeys.Common]);
}
