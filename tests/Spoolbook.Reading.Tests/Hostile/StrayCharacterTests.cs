using Spoolbook.Reading.Files;
using Spoolbook.Reading.Tests.Sheets;

namespace Spoolbook.Reading.Tests.Hostile;

/// <summary>Characters that no text may hold: each is an error at its place, and the text is read without it.</summary>
public sealed class StrayCharacterTests
{
    [Theory]
    [InlineData("\"Short\\v Pier\"", 14, 2, "U+000B, a vertical tab")]
    [InlineData("Short\v Pier", 13, 1, "U+000B, a vertical tab")]
    [InlineData("\"Short\\0 Pier\"", 14, 2, "U+0000, a null character")]
    [InlineData("\"Short\\e Pier\"", 14, 2, "U+001B, an escape character")]
    [InlineData("\"Short\\x1b Pier\"", 14, 4, "U+001B, an escape character")]
    [InlineData("\"\\\\\\tShort\\u0007 Pier\"", 18, 6, "U+0007, a bell")]
    [InlineData("\"Short\\N Pier\"", 14, 2, "U+0085, a next-line character")]
    [InlineData("\"Short\u009b Pier\"", 14, 1, "U+009B, a control character")]
    [InlineData("\"Short\\x7F Pier\"", 14, 4, "U+007F, a delete character")]
    [InlineData("\"Short\\uFFFE Pier\"", 14, 6, "U+FFFE, no character at all")]
    [InlineData("Short\uffff Pier", 13, 1, "U+FFFF, no character at all")]
    [InlineData("\"Short\\U0001FFFF Pier\"", 14, 10, "U+1FFFF, no character at all")]
    [InlineData("Short\u202e Pier", 13, 1, "U+202E, a right-to-left override")]
    [InlineData("'Short\u2067 Pier'", 14, 1, "U+2067, a right-to-left isolate")]
    [InlineData("Short\u200f Pier", 13, 1, "U+200F, a right-to-left mark")]
    public void A_character_that_no_text_may_hold_is_an_error_at_its_place_and_the_text_is_read_without_it(
        string title,
        int column,
        int length,
        string what
    )
    {
        var text = SmallProduction.Head.Replace("title: Short Pier", "title: " + title, StringComparison.Ordinal);
        var result = ProductionReader.Read(SmallProduction.With("production.yaml", text));

        var finding = Assert.Single(result.Findings);
        Assert.Equal(
            ("sheet/bad-character", 2, column, length),
            (finding.Check, finding.Place.Line, finding.Place.Column, finding.Place.Length)
        );
        Assert.Contains($"holds {what}, which no text may hold", finding.Message, StringComparison.Ordinal);
        Assert.NotEmpty(finding.Help);
        Assert.Equal("Short Pier", result.Production!.Title.Value.TrimStart('\\', '\t'));
    }

    [Theory]
    [InlineData("🎬🎞👨‍👩‍👧🏴󠁧󠁢󠁳󠁣󠁴󠁿")]
    [InlineData("e\u0301 ñ Łódź שלום 日曜日")]
    [InlineData("½ soft\u00adhyphen 🄰")]
    public void Letters_and_signs_of_every_script_are_allowed_in_a_text(string title)
    {
        var text = SmallProduction.Head.Replace("Short Pier", title, StringComparison.Ordinal);
        var result = ProductionReader.Read(SmallProduction.With("production.yaml", text));

        Assert.Empty(result.Findings);
        Assert.Equal(title, result.Production!.Title.Value);
    }

    [Theory]
    [InlineData("\"\\uD83C\"")]
    [InlineData("\"\\uDFAC\"")]
    [InlineData("\"\\uDFAC\\uD83C\"")]
    public void Half_of_a_character_is_never_read(string title)
    {
        var text = SmallProduction.Head.Replace("title: Short Pier", "title: " + title, StringComparison.Ordinal);
        var result = ProductionReader.Read(SmallProduction.With("production.yaml", text));

        Assert.Contains(result.Findings, f => f.Check is "sheet/not-yaml" or "sheet/bad-character");
        Assert.DoesNotContain(result.Production!.Title.Value, char.IsSurrogate);
    }

    [Fact]
    public void A_key_is_read_without_its_stray_character()
    {
        var text = SmallProduction.Head.Replace("code: PIER", "\"co\\0de\": PIER", StringComparison.Ordinal);
        var result = ProductionReader.Read(SmallProduction.With("production.yaml", text));

        Assert.Equal("sheet/bad-character", Assert.Single(result.Findings).Check);
        Assert.Equal("PIER", result.Production!.Code.Value);
    }

    [Fact]
    public void A_logo_whose_name_holds_a_null_character_is_looked_for_without_it()
    {
        using var folder = new ScratchFolder();
        File.WriteAllText(Path.Combine(folder.Path, "production.yaml"), SmallProduction.Head + "school: {logo: \"a\\0b.svg\"}\n");

        var checks = ProductionReader.Read(new FolderFiles(folder.Path)).Findings.Select(f => f.Check);

        Assert.Contains("sheet/bad-character", checks);
        Assert.Contains("sheet/bad-picture", checks);
        Assert.Equal(PictureFile.Outside, new FolderFiles(folder.Path).OpenPicture("a\0b.svg"));
    }

    [Fact]
    public void A_text_longer_than_several_pages_is_an_error_and_read_to_the_limit()
    {
        var text = SmallProduction.Head.Replace("title: Short Pier", "title: " + new string('x', 20_001), StringComparison.Ordinal);
        var result = ProductionReader.Read(SmallProduction.With("production.yaml", text));

        var finding = Assert.Single(result.Findings);
        Assert.Equal("sheet/too-large", finding.Check);
        Assert.Contains("20001 characters long", finding.Message, StringComparison.Ordinal);
        Assert.Equal(20_000, result.Production!.Title.Value.Length);
    }
}
