using System.Text;
using QRCoder;
using Spoolbook.Papers.Pictures;

namespace Spoolbook.Papers.CanLabels;

/// <summary>A QR code as one path of a picture, one unit for each module, with its quiet zone.</summary>
static class QrPicture
{
    // The code still scans with a quarter of it scratched off the can.
    const QRCodeGenerator.ECCLevel Correction = QRCodeGenerator.ECCLevel.Q;

    /// <summary>The picture as an SVG element.</summary>
    /// <param name="text">The text to encode. Capitals and digits make the smallest code.</param>
    /// <param name="title">What the picture is, for screen readers.</param>
    public static string Draw(string text, string title)
    {
        using var code = QRCodeGenerator.GenerateQrCode(text, Correction, forceUtf8: !text.All(char.IsAscii));

        // The matrix includes the quiet zone of four modules that ISO/IEC 18004 requires; the picture has its own white.
        var modules = code.ModuleMatrix;
        var svg = new SvgWriter();
        svg.Rect(new Box(0, 0, modules.Count, modules.Count), "#ffffff", "none");
        svg.Path(Runs(modules), "#000000", "none");
        return svg.Finish(modules.Count, modules.Count, title, text);
    }

    /// <summary>A box for each run of dark modules in a row.</summary>
    static string Runs(List<System.Collections.BitArray> modules)
    {
        var path = new StringBuilder();
        for (var y = 0; y < modules.Count; y++)
        {
            for (var x = 0; x < modules[y].Length; x++)
            {
                var from = x;
                while (x < modules[y].Length && modules[y][x])
                {
                    x++;
                }

                if (x > from)
                {
                    path.Append(System.Globalization.CultureInfo.InvariantCulture, $"M{from} {y}h{x - from}v1h-{x - from}z");
                }
            }
        }

        return path.ToString();
    }
}
