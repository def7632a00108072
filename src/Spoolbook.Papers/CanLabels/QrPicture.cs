using System.Text;
using QRCoder;
using Spoolbook.Papers.Pictures;

namespace Spoolbook.Papers.CanLabels;

/// <summary>A QR code as one path of a picture, a unit a module, with its quiet zone round it.</summary>
static class QrPicture
{
    // A quarter of the code may be scratched off a can before it cannot be read any more.
    const QRCodeGenerator.ECCLevel Correction = QRCodeGenerator.ECCLevel.Q;

    /// <summary>The picture as an SVG element.</summary>
    /// <param name="text">What a reader reads. Capitals and digits make the smallest code.</param>
    /// <param name="title">What the picture is, for whoever cannot see it.</param>
    public static string Draw(string text, string title)
    {
        using var code = QRCodeGenerator.GenerateQrCode(text, Correction, forceUtf8: !text.All(char.IsAscii));

        // The matrix has the quiet zone of four modules that ISO/IEC 18004 asks for; the picture brings its own white.
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
