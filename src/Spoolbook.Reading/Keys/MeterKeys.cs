using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

static class MeterKeys
{
    public static readonly ValueKey<string> Meter = new("meter", WordForms.Text, "Its name in the log.")
    {
        Required = true,
        Example = "M1",
    };
    public static readonly ValueKey<string> What = new("what", WordForms.Text, "What it is, in words.") { Example = "Incident meter" };
    public static readonly ValueKey<string> Serial = new("serial", WordForms.Text, "Its number.") { Example = "\"5501\"" };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.meter"), [Meter, What, Serial, .. ReturnKeys.Common]);
}
