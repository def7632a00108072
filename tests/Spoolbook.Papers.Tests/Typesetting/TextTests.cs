using System.Text;
using Spoolbook.Papers.Typesetting.Fonts;
using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Tests.Typesetting;

public class TextTests
{
    [Fact]
    public void Text_is_read_back_as_it_was_written()
    {
        const string Text = "Ελληνικά, кириллица їєґ, Łódź, naïve café, 5½ ft → T 5.6 · 31+12 × 2 – “quoted” … <&>";
        var printed = Printed.Of("<p>{{ text }}</p>", facts: new { Text });
        Assert.Empty(printed.Warnings);
        using var pdf = Printed.Read(printed);
        Assert.Equal(Text, Printed.Body(pdf.GetPage(1)));
    }

    [Fact]
    public void Accents_written_apart_are_joined_to_their_letters()
    {
        using var pdf = Printed.Read(Printed.Of("<p>{{ text }}</p>", facts: new { Text = "cafe\u0301 u\u0308ber" }));
        Assert.Equal("café über", Printed.Body(pdf.GetPage(1)));
    }

    [Fact]
    public void A_character_that_the_font_lacks_is_a_box_that_is_still_that_character_when_copied()
    {
        var printed = Printed.Of("<p>\n{{ text }}</p>", facts: new { Text = "loaded by 中村" });
        var warning = Assert.Single(printed.Warnings);
        Assert.Equal((PageWarningKind.MissingGlyph, "loaded by 中村", 2), (warning.Kind, warning.Text, warning.Place.Line));
        Assert.Equal(["中", "村"], warning.Missing.AsEnumerable());
        using var pdf = Printed.Read(printed);
        Assert.Equal("loaded by 中村", Printed.Body(pdf.GetPage(1)));
    }

    [Fact]
    public void Right_to_left_letters_are_flagged_as_missing_and_a_mark_that_turns_other_letters_as_ignored()
    {
        Assert.Equal(
            PageWarningKind.MissingGlyph,
            Assert.Single(Printed.Of("<p>{{ text }}</p>", facts: new { Text = "שלום" }).Warnings).Kind
        );
        Assert.Equal(PageWarningKind.RightToLeft, Assert.Single(Printed.Of("<p>a\u061Cbc</p>").Warnings).Kind);
    }

    [Fact]
    public void Invisible_marks_leave_no_trace_and_no_warning()
    {
        var printed = Printed.Of("<p>{{ text }}</p>", facts: new { Text = "a\u200Bb\uFEFFc\u00ADd\u200De" });
        Assert.Empty(printed.Warnings);
        using var pdf = Printed.Read(printed);
        Assert.Equal("abcde", Printed.Body(pdf.GetPage(1)));
    }

    [Fact]
    public void Words_of_two_lines_do_not_grow_together()
    {
        var text = string.Join(' ', Enumerable.Repeat("daylight", 60));
        using var pdf = Printed.Read(Printed.Of($"<p>{text}</p>"));
        Assert.Equal(text, Printed.Body(pdf.GetPage(1)));
    }

    [Fact]
    public void A_break_in_a_value_breaks_the_line()
    {
        using var pdf = Printed.Read(Printed.Of("<p>{{ text }}</p>", facts: new { Text = "one\ntwo" }));
        var letters = Printed.BodyLetters(pdf.GetPage(1)).ToList();
        Assert.Equal("onetwo", string.Concat(letters.Select(l => l.Value)));
        Assert.True(letters[2].StartBaseLine.Y > letters[3].StartBaseLine.Y + 8);
    }

    [Fact]
    public void No_glyph_of_the_fonts_is_put_together_from_glyphs_put_together()
    {
        foreach (var face in Enum.GetValues<Face>())
        {
            var font = BuiltInFonts.Get(face);
            Assert.DoesNotContain(Enumerable.Range(0, font.GlyphCount), glyph => font.HasNestedParts((ushort)glyph));
        }
    }

    // The n with an apostrophe before it: Unicode recommends the two characters instead.
    const int Deprecated = 0x149;

    [Theory]
    [InlineData("Latin", 0x20, 0x17F)]
    [InlineData("Greek", 0x391, 0x3A1)]
    [InlineData("Greek small", 0x3AC, 0x3CE)]
    [InlineData("Cyrillic", 0x400, 0x45F)]
    public void The_fonts_know_the_scripts(string script, int first, int last)
    {
        foreach (var face in Enum.GetValues<Face>())
        {
            var lacking = Enumerable
                .Range(first, last - first + 1)
                .Where(c => c is < 0x7F or > 0x9F && c != Deprecated)
                .Where(c => !BuiltInFonts.Get(face).Has(new Rune(c)));
            Assert.True(
                !lacking.Any(),
                $"{face} lacks {script} "
                    + $"{string.Join(' ', lacking.Select(c => c.ToString("X4", System.Globalization.CultureInfo.InvariantCulture)))}"
            );
        }
    }

    [Fact]
    public void Digits_of_columns_have_one_width_in_every_face()
    {
        foreach (var face in Enum.GetValues<Face>())
        {
            var widths = "0123456789".Select(digit => TextMeasure.Width(digit.ToString(), face, 10, tabular: true)).ToList();
            Assert.True(widths.Max() - widths.Min() < 0.02, $"{face}: {widths.Min()} to {widths.Max()}");
        }
    }
}
