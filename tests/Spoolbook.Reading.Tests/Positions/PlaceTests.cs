using Spoolbook.Reading.Files;
using Spoolbook.Reading.Tests.Sheets;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Tests.Positions;

public sealed class PlaceTests
{
    [Fact]
    public void Every_value_knows_where_it_is_written() =>
        Verified.Text("small-production", RecordText.Places(SmallProduction.Read().Production!));

    [Fact]
    public void A_place_holds_the_very_characters_of_its_value()
    {
        var result = ProductionReader.Read(TextFiles.Of([.. SmallProduction.Files]));
        var take = result.Production!.Rolls[0].Takes.First();

        Assert.Equal("14+10", Characters(result, take.To.Place));
        Assert.Equal("5.6", Characters(result, take.Stop!.Place));
        Assert.Equal("6ft", Characters(result, take.Focus!.Place));
        Assert.Equal("2026-10-04 09:10", Characters(result, result.Production.Rolls[0].Load.On.Place));
        Assert.Equal("\"85\"", Characters(result, result.Production.Rolls[0].Takes.Last().Filters[0].Place));
        Assert.Equal("take", Characters(result, take.Place));
    }

    [Theory]
    [InlineData("\n", "")]
    [InlineData("\r\n", "")]
    [InlineData("\r", "")]
    [InlineData("\n", "\uFEFF")]
    [InlineData("\r\n", "\uFEFF")]
    public void Line_ends_and_a_byte_order_mark_move_no_place(string lineEnd, string mark)
    {
        var files = SmallProduction.Files.Select(f => (f.Name, Text: mark + f.Text.ReplaceLineEndings(lineEnd)));
        var result = ProductionReader.Read(TextFiles.Of([.. files]));

        Assert.Empty(result.Findings);
        Assert.Equal(RecordText.Places(SmallProduction.Read().Production!), RecordText.Places(result.Production!));
    }

    [Fact]
    public void An_anchor_and_a_tag_are_no_part_of_the_value()
    {
        var roll = SmallProduction.Roll.Replace("body: B1", "body: &cam !!str B1", StringComparison.Ordinal);
        var result = ProductionReader.Read(SmallProduction.With("rolls/r01.yaml", roll));

        Assert.Equal("B1", Characters(result, result.Production!.Rolls[0].Body!.Place));
    }

    [Fact]
    public void An_excerpt_of_a_long_line_shows_the_place()
    {
        var roll = SmallProduction.Roll.Replace("frames: 96fr", $"note: {new string('x', 5000)}, frames: ninety", StringComparison.Ordinal);
        var result = ProductionReader.Read(SmallProduction.With("rolls/r01.yaml", roll));

        var excerpt = result.Sources.Around(Assert.Single(result.Findings).Place)!;
        Assert.Equal(SourceTexts.MostShown, excerpt.Text.Length);
        Assert.Equal("ninety", excerpt.Text.Substring(excerpt.Column - 1, excerpt.Length));
    }

    static string Characters(ReadResult result, Place place) =>
        result.Sources.Line(place.File, place.Line)!.Substring(place.Column - 1, place.Length);
}
