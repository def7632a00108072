using System.Globalization;
using System.Text;
using Spoolbook.Papers.Pictures;
using Spoolbook.Papers.Tests.Typesetting;

namespace Spoolbook.Papers.Tests.Pictures;

/// <summary>Strips on a fax, or on a copy of a copy: black or white, nothing between.</summary>
public sealed class OneBitTests
{
    // Rows and columns of the bitmap at 100 dots an inch: a common fax, coarser than any copier.
    const int DotsPerInch = 100;

    // A band as it is in a strip, over the whole width of a letter sheet. Its frame is in the rows from 60 to 82.
    const double Wide = 532,
        High = 9.5;

    const int Across = 300,
        FirstRow = 60,
        LastRow = 82;

    [ToolFact("pdftoppm")]
    public void Each_kind_of_film_has_a_pattern_of_its_own_in_one_bit()
    {
        // A fade is on a take, and no kind of film.
        var pictures = Enum.GetValues<Pattern>().Where(pattern => pattern != Pattern.Fade).ToDictionary(pattern => pattern, Copied);
        foreach (var (one, dots) in pictures)
        {
            foreach (var (other, otherDots) in pictures.Where(p => p.Key > one))
            {
                var differing = dots.Zip(otherDots).Count(pair => pair.First != pair.Second);
                Assert.True(differing > dots.Length * 0.015, $"{one} looks like {other}: {differing} of {dots.Length} dots differ");
            }
        }

        // Good film is white inside its frame; of waste and fog enough is black that nobody takes it for good.
        Assert.Equal(0, Inside(pictures[Pattern.Good]).Count(black => black));
        Assert.All([Pattern.Waste, Pattern.Fog], spoilt =>
            Assert.True(Inside(pictures[spoilt]).Count(black => black) > 0.15 * Inside(pictures[spoilt]).Count(), spoilt.ToString())
        );
    }

    static IEnumerable<bool> Inside(bool[] dots) => dots.Skip((67 - FirstRow) * Across).Take(7 * Across);

    /// <summary>A stretch of a band, dot by dot.</summary>
    static bool[] Copied(Pattern pattern)
    {
        var svg = new SvgWriter();
        Patterns.Draw(svg, new Box(0, 0, Wide, High), pattern);
        var figure = $"<figure>{svg.Finish(Wide, High, "Film", "")}</figure>";
        var folder = Directory.CreateTempSubdirectory("spoolbook-bit-").FullName;
        try
        {
            var pdf = Path.Combine(folder, "page.pdf");
            File.WriteAllBytes(pdf, [.. Printed.Of(figure).Bytes]);
            Assert.Equal(
                0,
                Tools.Run("pdftoppm", "-mono", "-r", Number(DotsPerInch), "-singlefile", pdf, Path.Combine(folder, "page")).Status
            );
            return Middle(File.ReadAllBytes(Path.Combine(folder, "page.pbm")));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    static bool[] Middle(byte[] bitmap)
    {
        var head = Encoding.ASCII.GetString(bitmap, 0, 32).Split((char[])[' ', '\n'], 4);
        var (wide, start) = (int.Parse(head[1], CultureInfo.InvariantCulture), $"P4\n{head[1]} {head[2]}\n".Length);
        var row = (wide + 7) / 8;
        return
        [
            .. from y in Enumerable.Range(FirstRow, LastRow - FirstRow)
            from x in Enumerable.Range(150, Across)
            select (bitmap[start + (y * row) + (x / 8)] & (0x80 >> (x % 8))) != 0,
        ];
    }

    static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
