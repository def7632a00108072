using System.Globalization;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Forms;

static class ColourForm
{
    public static readonly Form<InkColour> Colour = new(
        SheetChecks.BadColour,
        Sentence.Of("sheet/bad-colour.value.colour"),
        Sentence.Of("sheet/bad-colour.help.colour"),
        FormJson.Text("^#?[0-9A-Fa-f]{6}$"),
        AColour
    );

    static bool AColour(string text, ReadingContext context, out InkColour value)
    {
        var digits = text.StartsWith('#') ? text[1..] : text;
        var read = int.TryParse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var rgb);
        value = new InkColour(rgb);
        return read && digits.Length == 6;
    }
}
