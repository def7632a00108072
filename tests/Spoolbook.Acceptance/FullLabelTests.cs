using System.Globalization;
using System.Text.RegularExpressions;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Spoolbook.Acceptance;

/// <summary>Labels of productions with long names: what gives way first, and what is flagged.</summary>
public sealed partial class FullLabelTests : IDisposable
{
    // The smallest type that can be read in the hand, in points (from memory).
    const double Least = 5;

    readonly Bench _bench = new();
    readonly string _production;

    public FullLabelTests()
    {
        _production = _bench.PathOf("production.yaml");
        File.Copy(Path.Combine(Repository.Root, "tests/Spoolbook.Acceptance/productions/hand-held-one-roll/sunday.yaml"), _production);
    }

    public void Dispose() => _bench.Dispose();

    [Theory]
    [InlineData("a4-8", "a4")]
    [InlineData("letter-6", "letter")]
    [InlineData("cut", "a4")]
    [InlineData("cut", "letter")]
    public void Names_of_sixty_letters_in_every_field_leave_a_label_that_is_read(string sheet, string paper)
    {
        Sheet(sheet, paper);
        Write("title: Sunday, Ropewalk Baths", $"title: \"{Name("Title")}\"");
        Write("stock: Black-and-white reversal 100", $"stock: \"{Name("Stock")}\", emulsion: \"{Name("Emulsion")}\"");
        Write("lot: X", $"lot: \"{Name("Lot")}\"");
        Write("body: B", $"body: \"{Name("Body")}\"");
        Write("bw-reversal", $"\"{Name("Process")}\"");
        Write("roll: 1", $"roll: \"{Name("Roll")}\"");
        ReturnTo(5);

        var printed = Make();

        Assert.DoesNotContain("is cut off", printed, StringComparison.Ordinal);
        using var pdf = PdfDocument.Open(_bench.PathOf("papers/can-labels.pdf"));
        var letters = pdf.GetPage(1).Letters;
        var text = string.Concat(letters.Select(l => l.Value));
        Assert.Contains("EXPOSED", text, StringComparison.Ordinal);
        Assert.Contains("DO NOT OPEN", text, StringComparison.Ordinal);
        Assert.All(letters, letter => Assert.True(letter.PointSize >= Least - 0.01, $"{letter.Value} of {letter.PointSize} pt"));
        // The roll's name is never shortened, and nothing is larger.
        Assert.StartsWith(
            Name("Roll"),
            Spaced(letters.Where(l => l.PointSize > letters.Max(m => m.PointSize) - 0.01)),
            StringComparison.Ordinal
        );
        // Inside the first label, with a margin.
        var (left, bottom, right, top) = FirstLabel(sheet, paper, pdf.GetPage(1).Height);
        Assert.All(letters, l =>
            Assert.True(l.StartBaseLine.X > left && l.EndBaseLine.X < right && l.StartBaseLine.Y > bottom && l.BoundingBox.Top < top)
        );
    }

    [Theory]
    [InlineData("a4-8", "a4")]
    [InlineData("letter-6", "letter")]
    [InlineData("cut", "a4")]
    public void A_long_address_is_set_smaller_and_is_complete(string sheet, string paper)
    {
        Sheet(sheet, paper);
        ReturnTo(4);

        Assert.DoesNotContain("paper/does-not-fit", Make(), StringComparison.Ordinal);

        using var pdf = PdfDocument.Open(_bench.PathOf("papers/can-labels.pdf"));
        var letters = pdf.GetPage(1).Letters;
        Assert.Contains(Name("Line 3"), Spaced(letters), StringComparison.Ordinal);
        Assert.All(letters, letter => Assert.True(letter.PointSize >= Least - 0.01));
        // The roll's number is no smaller for it: a digit is 10 mm high (from memory), 0.727 of the size of this face.
        Assert.True(letters.Max(l => l.PointSize) * 0.727 >= 10 * 72 / 25.4);
    }

    [Fact]
    public void An_address_too_long_for_a_label_ends_in_an_ellipsis_and_is_flagged_once_with_how_much_of_it_fits()
    {
        var sample = _bench.CopyOf(Repository.Sample);
        var file = Path.Combine(sample, "production.yaml");
        File.WriteAllText(
            file,
            ReturnLine()
                .Replace(
                    File.ReadAllText(file),
                    $"return-to: [{string.Join(", ", Enumerable.Range(0, 40).Select(i => $"\"{Name($"Line {i}")}\""))}]",
                    1
                )
        );

        var (status, printed, _) = _bench.Run("make", sample, "--out", "papers");

        Assert.Equal(0, status);
        var told = Assert.Single(Report().Matches(printed));
        Assert.Equal(40 * 60 + 39 * 2, int.Parse(told.Groups["all"].ValueSpan, CultureInfo.InvariantCulture));
        Assert.Equal("Return to: Line 0", told.Groups["near"].Value);
        Assert.EndsWith("production.yaml", told.Groups["file"].Value, StringComparison.Ordinal);
        using var pdf = PdfDocument.Open(_bench.PathOf("papers/can-labels.pdf"));
        var text = Spaced(pdf.GetPage(1).Letters);
        // A can with a warning on it has less room for the address than the others.
        var shown = text.Split("Return to: ").Skip(1).Min(t => t.IndexOf('…', StringComparison.Ordinal));
        var fits = int.Parse(told.Groups["fits"].ValueSpan, CultureInfo.InvariantCulture);
        Assert.InRange(fits, 200, 1500);
        // A blank or comma before the ellipsis is dropped.
        Assert.InRange(shown, fits - 2, fits);
    }

    [Fact]
    public void Names_of_common_length_are_set_in_type_that_is_read_without_a_thought()
    {
        Make();
        using var pdf = PdfDocument.Open(_bench.PathOf("papers/can-labels.pdf"));
        Assert.True(pdf.GetPage(1).Letters.GroupBy(l => Math.Round(l.PointSize, 2)).MaxBy(g => g.Count())!.Key >= 7);
    }

    static string Name(string begin) =>
        (begin + " of the long and windy estuary beyond the breakwater and the quay").PadRight(60, 'x')[..60].TrimEnd().PadRight(60, 'x');

    /// <summary>Letters as words: a gap on a line separates, and so does a line break.</summary>
    static string Spaced(IEnumerable<Letter> letters) =>
        string.Join(' ', string.Concat(letters.Select(l => l.Value)).Split(' ', StringSplitOptions.RemoveEmptyEntries));

    void Sheet(string sheet, string paper) => Write("code: BATHS", $"code: BATHS\npaper: {paper}\nlabels: {{sheet: {sheet}}}");

    void ReturnTo(int lines) =>
        Write(
            "return-to: [P. Haddad-Ortega, 9 Tar Yard]",
            $"return-to: [{string.Join(", ", Enumerable.Range(0, lines).Select(i => $"\"{Name($"Line {i}")}\""))}]"
        );

    string Make()
    {
        var (status, printed, error) = _bench.Run("make", "production.yaml", "--out", "papers");
        Assert.True(status == 0, printed + error);
        return printed;
    }

    void Write(string old, string written)
    {
        var text = File.ReadAllText(_production);
        Assert.Contains(old, text, StringComparison.Ordinal);
        File.WriteAllText(_production, text.Replace(old, written, StringComparison.Ordinal));
    }

    // By the measures on the boxes of the two label sheets (common practice) and by the cut lines of the plain one.
    static (double Left, double Bottom, double Right, double Top) FirstLabel(string sheet, string paper, double height)
    {
        const double Millimetre = 72 / 25.4;
        var (left, top, wide, high) = (sheet, paper) switch
        {
            ("a4-8", _) => (4.65, 13.1, 99.1, 67.7),
            ("letter-6", _) => (0.1563 * 25.4, 12.7, 101.6, 25.4 * 10 / 3),
            (_, "a4") => (10, 4.5, 95, 72),
            _ => (12.95, 3.1, 95, 68.3),
        };
        return (left * Millimetre, height - ((top + high) * Millimetre), (left + wide) * Millimetre, height - (top * Millimetre));
    }

    [GeneratedRegex(
        @"(?<file>[\w/.-]+):\d+:\d+: warning: A label in can-labels\.pdf has room for (?<fits>\d+) "
            + @"of the (?<all>\d+) letters of “(?<near>Return to: Line 0)[^”]*…”"
    )]
    private static partial Regex Report();

    [GeneratedRegex(@"return-to: \[[^\]]*\]")]
    private static partial Regex ReturnLine();
}
