using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of a door that was opened on the film.</summary>
static class FogKeys
{
    public static readonly ValueKey<Film.Footage> Before = new("before", FilmForms.Length, "Film lost towards the head.")
    {
        Required = true,
        Example = "1+20",
    };
    public static readonly ValueKey<Film.Footage> After = new("after", FilmForms.Length, "Film lost towards the tail.")
    {
        Required = true,
        Example = "2+00",
    };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.fog"), [Before, After, .. EntryKeys.Common]);
}
