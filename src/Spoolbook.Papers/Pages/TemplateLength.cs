using System.Globalization;

namespace Spoolbook.Papers.Pages;

/// <summary>A length as a template writes it: "36", "12pt", "10mm", "0.5in". Plain numbers are points, or a count.</summary>
static class TemplateLength
{
    static readonly (string Unit, double Points)[] Units = [("pt", 1), ("mm", 72 / 25.4), ("in", 72)];

    public static bool IsValid(string text) => Parse(text) is not null;

    public static double Points(string? text, double fallback) => text is null ? fallback : Parse(text) ?? fallback;

    static double? Parse(string text)
    {
        double factor = 1;
        foreach (var (unit, points) in Units)
        {
            if (!text.EndsWith(unit, StringComparison.Ordinal))
            {
                continue;
            }

            factor = points;
            text = text[..^unit.Length];
            break;
        }
        var number = double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value);
        return number && value is >= 0 and <= 5000 ? value * factor : null;
    }
}
