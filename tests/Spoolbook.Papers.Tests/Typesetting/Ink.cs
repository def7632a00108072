using System.Globalization;
using System.Text;
using Spoolbook.Papers.Typesetting;

namespace Spoolbook.Papers.Tests.Typesetting;

/// <summary>The ink on a printed page as drawn by an outside program, without the running head and foot.</summary>
sealed class Ink
{
    const int Resolution = 300,
        Edge = 44 * Resolution / 72;

    readonly byte[] _dots;
    readonly int _wide,
        _high;

    Ink(byte[] file)
    {
        var head = Encoding.ASCII.GetString(file, 0, Math.Min(40, file.Length)).Split([' ', '\n'], 5);
        _wide = int.Parse(head[1], CultureInfo.InvariantCulture);
        _high = int.Parse(head[2], CultureInfo.InvariantCulture);
        _dots = file[^(_wide * _high)..];
    }

    public static Ink Of(PdfResult printed)
    {
        var path = Path.Combine(Path.GetTempPath(), "spoolbook-" + Guid.NewGuid().ToString("N"));
        try
        {
            File.WriteAllBytes(path, printed.Bytes);
            Assert.Equal(
                0,
                Tools.Run("pdftoppm", "-r", Resolution.ToString(CultureInfo.InvariantCulture), "-gray", "-singlefile", path, path).Status
            );
            return new Ink(File.ReadAllBytes(path + ".pgm"));
        }
        finally
        {
            File.Delete(path);
            File.Delete(path + ".pgm");
        }
    }

    /// <summary>Rows of ink with white above and below, from the top.</summary>
    public IReadOnlyList<(int Top, int Bottom)> Bands()
    {
        var bands = new List<(int, int)>();
        var start = -1;
        for (var y = Edge; y < _high - Edge; y++)
        {
            var inked = Enumerable.Range(0, _wide).Any(x => IsInk(x, y));
            if (inked && start < 0)
            {
                start = y;
            }

            if (!inked && start >= 0)
            {
                bands.Add((start, y));
                start = -1;
            }
        }
        return bands;
    }

    /// <summary>Half way between the leftmost and the rightmost ink of a band.</summary>
    public double Middle((int Top, int Bottom) band)
    {
        var columns = Enumerable
            .Range(0, _wide)
            .Where(x => Enumerable.Range(band.Top, band.Bottom - band.Top).Any(y => IsInk(x, y)))
            .ToList();
        return (columns[0] + columns[^1]) / 2.0;
    }

    bool IsInk(int x, int y) => _dots[y * _wide + x] < 128;
}
