using Spoolbook.Papers.Typesetting.Fonts;
using Spoolbook.Pdf.Fonts;

namespace Spoolbook.Papers.Tests.Typesetting;

/// <summary>
/// Accents on letters without an accented form in the font, and letters that the font lacks, as an outside reader finds
/// them on the page.
/// </summary>
public class AccentTests
{
    [ToolTheory("pdftoppm")]
    [InlineData("ж\u0302")]
    [InlineData("Ж\u0306")]
    [InlineData("Ш\u0308\u0300")]
    [InlineData("i\u0310")]
    [InlineData("l\u0343")]
    public void On_the_page_the_accent_is_ink_of_its_own_over_the_middle_of_the_letter(string text)
    {
        var ink = Ink.Of(Printed.Of("<p class=\"huge\">{{ text }}</p>", facts: new { Text = text }));
        var parts = ink.Bands();
        Assert.Equal(text.Length, parts.Count);
        Assert.All(parts, part => Assert.InRange(Math.Abs(ink.Middle(part) - ink.Middle(parts[^1])), 0, 2));
    }

    [Fact]
    public void An_i_has_an_accent_in_place_of_its_dot_and_is_still_an_i()
    {
        const string Text = "\u0456\u0310";
        using var pdf = Printed.Read(Printed.Of("<p>{{ text }}</p>", facts: new { Text }));
        Assert.Equal(Text, Assert.Single(Printed.BodyLetters(pdf.GetPage(1))).Value);
        Assert.True(Placed(Text)[0].Top < Placed("\u0456")[0].Top * 0.85);
    }

    [ToolFact("pdftoppm")]
    public void A_letter_with_accents_of_its_own_keeps_them_beside_more()
    {
        foreach (var text in new[] { "\u00E9\u0332", "\u0451\u0332", "\u00EE\u0332" })
        {
            var bands = Ink.Of(Printed.Of("<p class=\"huge\">{{ text }}</p>", facts: new { Text = text })).Bands();
            Assert.Equal(3, bands.Count);
        }
    }

    // One letter is an extended grapheme cluster by Unicode Standard Annex 29, as in the runtime.
    [Theory]
    [InlineData("👩\u200D🎬", 1)]
    [InlineData("שָׁלוֹם", 4)]
    [InlineData("한국", 2)]
    [InlineData("नमस्ते", 4)]
    [InlineData("🇪🇺", 1)]
    public void What_is_read_as_one_letter_is_one_box_and_copied_whole(string text, int boxes)
    {
        var printed = Printed.Of("<p>{{ text }}</p>", facts: new { Text = text });
        using var pdf = Printed.Read(printed);
        var letters = Printed.BodyLetters(pdf.GetPage(1)).ToList();
        Assert.Equal(text, string.Concat(letters.Select(l => l.Value)));
        Assert.Equal(boxes, letters.Count);
        Assert.Single(letters.Select(l => Math.Round(l.BoundingBox.Width, 3)).Distinct());
        Assert.Equal(
            boxes * TextMeasure.Width("口", Face.Regular, 9, tabular: false),
            TextMeasure.Width(text, Face.Regular, 9, tabular: false),
            0.001
        );
    }

    /// <summary>The rectangles of the letters and of their accents in place, in font units.</summary>
    static List<GlyphBounds> Placed(string text)
    {
        var font = BuiltInFonts.Get(Face.Regular);
        var placed = new List<GlyphBounds>();
        var pen = 0;
        foreach (var set in TextSetting.Set(font, text, tabular: false))
        {
            pen += set.Before;
            placed.Add(Moved(font.Bounds(set.Glyph)!.Value, pen, 0));
            if (!set.Accents.IsDefault)
            {
                placed.AddRange(set.Accents.Select(accent => Moved(font.Bounds(accent.Glyph)!.Value, pen + accent.Right, accent.Up)));
            }

            pen += font.Advance(set.Glyph);
        }
        return placed;
    }

    static GlyphBounds Moved(GlyphBounds box, int right, int up) => new(box.Left + right, box.Bottom + up, box.Right + right, box.Top + up);

    static double Middle(GlyphBounds box) => (box.Left + box.Right) / 2.0;
}
