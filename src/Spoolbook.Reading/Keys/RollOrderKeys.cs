using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of what the crew orders from the lab for one roll.</summary>
static class RollOrderKeys
{
    public static readonly ValueKey<string> Process = new("process", WordForms.Text, "The process.") { Example = "ecn-2" };
    public static readonly ValueKey<double> Push = new("push", FilmForms.Stops, "Stops to push (above zero) or pull (below).")
    {
        Example = "1",
    };
    public static readonly ValuesKey<string> Services = new(
        "services",
        WordForms.Text,
        "What is wanted beside the process, by the names of the lab's services."
    )
    {
        Example = "[prep, scan]",
    };
    public static readonly ValuesKey<DeclaredEffect> Effects = new(
        "effects",
        WordForms.Effect,
        "Effects made in the camera that the lab must leave as they are."
    )
    {
        Example = "[fade, double-exposure]",
    };
    public static readonly ValueKey<DateOnly> Sent = new("sent", TimeForms.Date, "The day on which it went to the lab.")
    {
        Example = "2026-10-06",
    };
    public static readonly ValueKey<bool> Send = new(
        "send",
        WordForms.YesNo,
        "Whether it goes to the lab at all; it does unless it says no."
    )
    {
        Example = "yes",
    };
    public static readonly ValueKey<string> Notes = new("notes", WordForms.Text, "Words for the lab.")
    {
        Example = "do not correct the dissolve in the camera",
    };

    public static readonly KeyTable Table = new(
        Sentence.Of("common.owner.roll-order"),
        [Process, Push, Services, Effects, Send, Sent, Notes]
    );
}
