using CsCheck;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Tests.Sheets;

public class InkColourTests
{
    // The two ends are in the text of the Web Content Accessibility Guidelines 2.2 (21:1 and 1:1); the greys at the border of
    // level AA and pure red and blue are figures that the guidelines' tools give, from memory.
    [Theory]
    [InlineData(0x000000, 21.00)]
    [InlineData(0xFFFFFF, 1.00)]
    [InlineData(0x767676, 4.54)]
    [InlineData(0x777777, 4.48)]
    [InlineData(0xFF0000, 4.00)]
    [InlineData(0x0000FF, 8.59)]
    public void Contrast_with_paper_is_as_the_guidelines_compute_it(int rgb, double contrast) =>
        Assert.Equal(contrast, new InkColour(rgb).ContrastOnPaper, 2);

    [Fact]
    public void Any_colour_can_be_made_dark_enough_and_one_that_is_stays()
    {
        Gen.Int[0, 0xFFFFFF]
            .Sample(rgb =>
            {
                var colour = new InkColour(rgb);
                var dark = colour.Darkened(InkColour.EnoughForText);
                return dark.ContrastOnPaper >= InkColour.EnoughForText
                    && (colour.ContrastOnPaper < InkColour.EnoughForText || dark == colour);
            });
    }
}
