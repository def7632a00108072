using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

static class RewindKeys
{
    public static readonly ValueKey<Film.Footage> To = new("to", FilmForms.Length, "Where the film is after it.")
    {
        Required = true,
        Example = "19+32",
    };
    public static readonly ValueKey<bool> Shutter = new("shutter", WordForms.ShutterClosed, "Whether the variable shutter was closed.")
    {
        Example = "closed",
    };
    public static readonly ValueKey<bool> In = new("in", WordForms.InDark, "Whether it was rewound in the dark or in the camera.")
    {
        Example = "camera",
    };
    public static readonly ValueKey<bool> CounterZeroed = new(
        "counter-zeroed",
        WordForms.YesNo,
        "Whether the frame counter was set to zero before the pass that is rewound."
    )
    {
        Example = "yes",
    };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.rewind"), [To, Shutter, In, CounterZeroed, .. EntryKeys.Common]);
}
