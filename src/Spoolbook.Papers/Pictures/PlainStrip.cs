using System.Globalization;
using System.Security;
using System.Text;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Pictures;

/// <summary>A roll as one bar, each stretch in the tone of its account.</summary>
internal static class PlainStrip
{
    const double Width = 720;
    const double Height = 36;

    public static string Draw(RollBook roll)
    {
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {Width} {Height}\"><title>{SecurityElement.Escape("Roll " + roll.Roll.Name.Value)}</title>");
        foreach (var segment in roll.Strip.Segments)
        {
            var x = Width * segment.Span.From.Frames / roll.Strip.Loaded.Frames;
            var width = Width * segment.Span.Length.Frames / roll.Strip.Loaded.Frames;
            svg.Append(CultureInfo.InvariantCulture, $"<rect x=\"{x:0.##}\" y=\"2\" width=\"{width:0.##}\" height=\"{Height - 4}\" fill=\"{Tone(segment.Account)}\" stroke=\"#222222\" stroke-width=\"0.5\"/>");
        }

        return svg.Append("</svg>").ToString();
    }

    static string Tone(Account account) => account switch
    {
        Account.Good => "#ffffff",
        Account.Hold => "#dddddd",
        Account.NoGood => "#aaaaaa",
        Account.Waste => "#555555",
        _ => "#f6f6f6",
    };
}
