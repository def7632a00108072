using System.Text;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Tests.Sheets;

namespace Spoolbook.Reading.Tests.Hostile;

/// <summary>Files that nobody writes in good faith. Each brings a finding, and none an exception.</summary>
public sealed class HostileTests
{
    [Theory]
    [InlineData("", "sheet/missing-key")]
    [InlineData("   \n\n", "sheet/missing-key")]
    [InlineData("# nothing yet\n", "sheet/missing-key")]
    [InlineData("~", "sheet/missing-key")]
    [InlineData("---\n...\n", "sheet/missing-key")]
    [InlineData("just words", "sheet/not-yaml")]
    [InlineData("title:Short Pier\ncode:PIER", "sheet/not-yaml")]
    [InlineData("- a\n- b\n", "sheet/wrong-kind")]
    [InlineData("%YAML 9.9\n---\na: 1\n", "sheet/not-yaml")]
    [InlineData("\n%YAML 1.2\n---\n%%% \uFFFDroducti\uFFFDn.yaml", "sheet/not-yaml")]
    [InlineData("a: \"\\uD800\"", "sheet/not-yaml")]
    [InlineData("a: *b", "sheet/not-yaml")]
    [InlineData("a: &a [*a]", "sheet/not-yaml")]
    [InlineData("&a *a", "sheet/not-yaml")]
    [InlineData("<<: 3", "sheet/wrong-kind")]
    public void A_production_file_with_nothing_useful_is_one_finding(string text, string check)
    {
        var result = ProductionReader.Read(SmallProduction.With("production.yaml", text));

        Assert.Equal(check, result.Findings.Where(f => f.Check is not "sheet/missing-key" || check == "sheet/missing-key").First().Check);
        Assert.Single(result.Production!.Rolls);
    }

    [Fact]
    public void Aliases_that_multiply_are_refused()
    {
        var text = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (var i = 1; i < 30; i++)
        {
            text.Append($"a{i}: &a{i} [{string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 10))}]\n");
        }

        AssertOne("sheet/too-large", text.ToString());
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{a: ")]
    [InlineData("- ")]
    [InlineData("? ")]
    public void Two_hundred_levels_are_too_deep(string open) =>
        AssertOne("sheet/too-deep", "a:\n  " + string.Concat(Enumerable.Repeat(open, 200)));

    [Fact]
    public void Aliases_nested_in_aliases_are_too_deep()
    {
        var text = new StringBuilder("a0: &a0 [x]\n");
        for (var i = 1; i < 60; i++)
        {
            text.Append($"a{i}: &a{i} [*a{i - 1}]\n");
        }

        AssertOne("sheet/too-deep", text.ToString());
    }

    [Fact]
    public void A_file_over_five_megabytes_is_refused() => AssertOne("sheet/too-large", new string('#', FileText.MostBytes + 1));

    [Fact]
    public void A_long_file_of_brackets_is_too_deep() => AssertOne("sheet/too-deep", new string('[', FileText.MostBytes));

    [Fact]
    public void Many_unknown_keys_are_many_findings()
    {
        var text = SmallProduction.Head + string.Concat(Enumerable.Range(0, 2000).Select(i => $"key{i}: x\n"));

        Assert.Equal(2000, ProductionReader.Read(SmallProduction.With("production.yaml", text)).Findings.Length);
    }

    [Theory]
    [InlineData(new byte[] { 0xFF, 0xFE, 0x61, 0x00 }, "UTF-16")]
    [InlineData(new byte[] { 0xFE, 0xFF, 0x00, 0x61 }, "UTF-16")]
    [InlineData(new byte[] { 0x61, 0x00, 0x3A, 0x00, 0x20, 0x00 }, "UTF-16")]
    [InlineData(new byte[] { 0x89, 0x50, 0x4E, 0x47, 0x00, 0x00, 0x00, 0x0D }, "not text")]
    [InlineData(new byte[] { 0x61, 0x3A, 0x20, 0xE9, 0x0A }, "not saved as UTF-8")]
    public void Bytes_that_are_not_utf_8_are_flagged_as_such(byte[] bytes, string words)
    {
        var finding = Assert.Single(ProductionReader.Read(TextFiles.OfBytes(("production.yaml", bytes))).Findings);

        Assert.Equal("sheet/unreadable-file", finding.Check);
        Assert.Contains(words, finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_letter_in_another_encoding_is_shown_in_its_place()
    {
        byte[] bytes = [.. Encoding.ASCII.GetBytes("spoolbook: 1\ntitle: Caf"), 0xE9, .. Encoding.ASCII.GetBytes(" Noir\n")];
        var place = Assert.Single(ProductionReader.Read(TextFiles.OfBytes(("production.yaml", bytes))).Findings).Place;

        Assert.Equal((2, 11, 1), (place.Line, place.Column, place.Length));
    }

    [Fact]
    public void Folders_and_strange_names_in_place_of_files_are_findings()
    {
        using var folder = new ScratchFolder();
        Directory.CreateDirectory(Path.Combine(folder.Path, "production.yaml"));
        Directory.CreateDirectory(Path.Combine(folder.Path, "rolls", "r01.yaml"));
        File.WriteAllText(Path.Combine(folder.Path, "rolls", "notes.txt"), "not a roll");
        File.WriteAllText(Path.Combine(folder.Path, "rolls", "été 2.yaml"), SmallProduction.Roll);

        var result = ProductionReader.Read(new FolderFiles(folder.Path));

        Assert.Equal(
            ["production.yaml", "rolls/r01.yaml"],
            result.Findings.Where(f => f.Check == "sheet/unreadable-file").Select(f => f.Place.File)
        );
        Assert.Equal("R01", Assert.Single(result.Production!.Rolls).Name.Value);
    }

    [Fact]
    public void A_file_named_rolls_is_no_folder_of_rolls()
    {
        using var folder = new ScratchFolder();
        File.WriteAllText(Path.Combine(folder.Path, "production.yaml"), SmallProduction.Head);
        File.WriteAllText(Path.Combine(folder.Path, "rolls"), "x");

        Assert.Empty(ProductionReader.Read(new FolderFiles(folder.Path)).Findings);
    }

    [Fact]
    public void A_missing_folder_has_no_production_file() =>
        Assert.Equal("sheet/missing-file", Assert.Single(ProductionReader.Read(new FolderFiles("/nowhere/at/all")).Findings).Check);

    [Fact]
    public void A_single_file_is_a_whole_production()
    {
        using var folder = new ScratchFolder();
        var path = Path.Combine(folder.Path, "all.yaml");
        File.WriteAllText(path, SmallProduction.Head);
        var result = ProductionReader.Read(new FolderFiles(path));

        Assert.Empty(result.Findings);
        Assert.Equal("all.yaml", result.Production!.Title.Place.File);
    }

    static void AssertOne(string check, string text) =>
        Assert.Equal(check, Assert.Single(ProductionReader.Read(SmallProduction.With("production.yaml", text)).Findings).Check);
}
