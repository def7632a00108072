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
        select Check.At(
            colour.Place,
            Sentence.Of(
                "school/pale-colour.message",
                ("colour", colour.Value.ToString()),
                ("contrast-on-paper", Report(colour.Value.ContrastOnPaper)),
                ("enough-for-text", Report(InkColour.EnoughForText))
            )
        ) with
        {
            Advice = Sentence.Of("school/pale-colour.help", ("darkened", colour.Value.Darkened(InkColour.EnoughForText).ToString())),
        };

    // Rounded down, so that a colour that is too pale never shows the contrast that text needs.
    static string Report(double contrast) => (Math.Floor(contrast * 10) / 10).ToString("0.0", CultureInfo.InvariantCulture);
}
