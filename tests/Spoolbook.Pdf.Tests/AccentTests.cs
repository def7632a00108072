using CsCheck;
using Spoolbook.Pdf.Fonts;

namespace Spoolbook.Pdf.Tests;

/// <summary>Where accents are set on letters without an accented form in the font.</summary>
public class AccentTests
{
    static readonly TrueTypeFont _font = HouseFont.Read("Inter-Regular");

    // None of these letters has a form of its own with any of these accents.
    static readonly Gen<string> _letter = AnyOf("ж", "Ж", "ш", "Щ", "M", "l", "q", "λ", "Ω", "Ю", "b", "8");
    static readonly Gen<string> _over = AnyOf("\u0300", "\u0302", "\u0306", "\u0307", "\u030B", "\u0310", "\u0343");
    static readonly Gen<string> _under = AnyOf("\u0317", "\u031C", "\u0325", "\u032C", "\u0330", "\u0332");

    [Fact]
    public void An_accent_is_over_the_middle_of_its_letter_and_clear_of_it() =>
        Gen.Select(_letter, _over)
            .Sample(
                (letter, accent) =>
                {
                    var (on, mark) = (Placed(letter + accent)[0], Placed(letter + accent)[1]);
                    Assert.InRange(Math.Abs(Middle(on) - Middle(mark)), 0, 2);
                    Assert.True(mark.Bottom > on.Top);
                }
            );

    [Fact]
    public void An_accent_below_is_under_the_middle_of_its_letter_and_clear_of_it() =>
        Gen.Select(_letter, _under)
            .Sample(
                (letter, accent) =>
                {
                    var (on, mark) = (Placed(letter + accent)[0], Placed(letter + accent)[1]);
                    Assert.InRange(Math.Abs(Middle(on) - Middle(mark)), 0, 2);
                    Assert.True(mark.Top < on.Bottom);
                }
            );

    [Fact]
    public void A_second_accent_is_clear_of_the_first_and_what_follows_stays_where_it_was() =>
        Gen.Select(_letter, _over, _over)
            .Sample(
                (letter, first, second) =>
                {
                    var accented = Placed(letter + first + second + "x");
                    Assert.True(accented[2].Bottom > accented[1].Top);
                    Assert.Equal(Placed(letter + "x")[1], accented[3]);
                    Assert.Equal(
                        TextSetting.Width(_font, letter + "x", tabular: false),
                        TextSetting.Width(_font, letter + first + second + "x", tabular: false)
                    );
                }
            );

    [Fact]
    public void A_heap_of_accents_stays_within_reach_of_its_line()
    {
        var heap = Placed("Z" + string.Concat(Enumerable.Repeat("\u0302", 40)));
        Assert.InRange(heap.Count, 3, 10);
        Assert.True(heap.Max(g => g.Top) < 1.7 * heap[0].Top);
    }

    static Gen<string> AnyOf(params string[] all) => Gen.Int[0, all.Length - 1].Select(i => all[i]);

    /// <summary>The rectangles of the letters and of their accents in place, in font units.</summary>
    static List<GlyphBounds> Placed(string text)
    {
        var placed = new List<GlyphBounds>();
        var pen = 0;
        foreach (var set in TextSetting.Set(_font, text, tabular: false))
        {
            pen += set.Before;
            placed.Add(Moved(_font.Bounds(set.Glyph)!.Value, pen, 0));
            if (!set.Accents.IsDefault)
            {
                placed.AddRange(set.Accents.Select(accent => Moved(_font.Bounds(accent.Glyph)!.Value, pen + accent.Right, accent.Up)));
            }

            pen += _font.Advance(set.Glyph);
        }
        return placed;
    }

    static GlyphBounds Moved(GlyphBounds box, int right, int up) => new(box.Left + right, box.Bottom + up, box.Right + right, box.Top + up);

    static double Middle(GlyphBounds box) => (box.Left + box.Right) / 2.0;
}
