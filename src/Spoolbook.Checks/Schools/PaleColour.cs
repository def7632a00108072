using System.Globalization;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Schools;

static class PaleColour
{
    public static readonly RecordCheck Check = new("school/pale-colour", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from colour in context.Production.School?.Colours ?? []
        where colour.Value.ContrastOnPaper < InkColour.EnoughForText
        select Check.At(colour.Place, $"{colour.Value} is too pale to read on paper: a contrast of {Told(colour.Value.ContrastOnPaper)}, and text needs {Told(InkColour.EnoughForText)}") with
        {
            Help = $"The same colour, dark enough, is `\"{colour.Value.Darkened(InkColour.EnoughForText)}\"`.",
        };

    // Down, so that no colour that is too pale is told to have what text needs.
    static string Told(double contrast) => (Math.Floor(contrast * 10) / 10).ToString("0.0", CultureInfo.InvariantCulture);
}
