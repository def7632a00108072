using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

static class MotorKeys
{
    public static readonly ValueKey<string> Motor = new("motor", WordForms.Text, "Its name in the log.")
    {
        Required = true,
        Example = "E1",
    };
    public static readonly ValueKey<string> What = new("what", WordForms.Text, "What it is, in words.") { Example = "Electric motor" };
    public static readonly ValueKey<string> Serial = new("serial", WordForms.Text, "Its number, or a mark to know it by.")
    {
        Example = "\"E-204\"",
    };
    public static readonly ValuesKey<Film.Speed> Speeds = new("speeds", FilmForms.Speed, "The speeds that it runs at.")
    {
        Example = "[24]",
    };
    public static readonly ValueKey<bool> Sync = new("sync", WordForms.YesNo, "Whether it holds speed well enough for sound.")
    {
        Example = "no",
    };

    public static readonly KeyTable Table = new(
        Sentence.Of("common.owner.motor"),
        [Motor, What, Serial, Speeds, Sync, .. ReturnKeys.Common]
    );
}
