using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

static class SchoolKeys
{
    public static readonly ValueKey<string> Name = new("name", WordForms.Text, "Its name, in the head of the papers.")
    {
        Example = "Example Film School",
    };
    public static readonly ValueKey<string> Logo = new("logo", WordForms.Text, "Its logo: a PNG or SVG file in the production's folder.")
    {
        Example = "school.svg",
    };
    public static readonly ValuesKey<InkColour> Colours = new(
        "colours",
        ColourForm.Colour,
        "One or two colours, dark enough to read on paper."
    )
    {
        Example = "[\"#7a3410\", \"#2b5f86\"]",
    };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.school"), [Name, Logo, Colours]);
}
