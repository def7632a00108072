using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

static class ReloadKeys
{
    public static readonly ValueKey<DateTime> On = new("on", TimeForms.DateAndTime, "When it was done.") { Example = "2026-10-05 08:00" };
    public static readonly ValueKey<string> By = new("by", WordForms.Text, "Who did it, by a person's id.") { Example = "loader" };
    public static readonly ValueKey<string> Body = new("body", WordForms.Text, "The body it went into, if another.") { Example = "B2" };
    public static readonly ValueKey<LoadingLight> Light = new("light", WordForms.Light, "In what light.") { Example = "dark" };
    public static readonly ValueKey<Film.Footage> ZeroMoved = new(
        "zero-moved",
        FilmForms.Length,
        "How much farther down the film the new zero lies."
    )
    {
        Example = "2+00",
    };
    public static readonly ValueKey<Film.Footage> ZeroBack = new(
        "zero-back",
        FilmForms.Length,
        "How much nearer the head of the film the new zero lies; instead of `zero-moved`."
    )
    {
        Example = "1+00",
    };
    public static readonly ValueKey<Film.Footage> Lost = new("lost", FilmForms.Length, "Film lost to light in rethreading.")
    {
        Example = "1+00",
    };
    public static readonly ValueKey<Film.Footage> To = new("to", FilmForms.Length, "Where the film is after it, on the new count.")
    {
        Example = "41+00",
    };

    public static readonly KeyTable Table = new(
        Sentence.Of("common.owner.reload"),
        [On, By, Body, Light, ZeroMoved, ZeroBack, Lost, To, .. EntryKeys.Common]
    )
    {
        NotBoth = [(ZeroMoved, ZeroBack)],
    };
}
