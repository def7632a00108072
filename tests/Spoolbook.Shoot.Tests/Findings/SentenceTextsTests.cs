using Spoolbook.Shoot.Findings;

namespace Spoolbook.Shoot.Tests.Findings;

/// <summary>The words files of findings: each text is found by its key, and a spoilt file is refused.</summary>
public sealed class SentenceTextsTests
{
    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public void Every_line_of_a_words_file_is_found_by_its_key(string language)
    {
        var lines = File.ReadAllLines(Path.Combine(Repository.Root, "src", "Spoolbook.Shoot", "Findings", $"findings.{language}.txt"));
        var parsed = SentenceTexts.Parse(string.Join('\n', lines));
        var said = lines.Where(l => l.Length > 0 && l[0] != '#').Select(l => l.Split(" = ", 2)).ToArray();

        Assert.Equal(said.Select(l => l[0]), parsed.Keys);
        Assert.All(said, line =>
            Assert.Equal((line[1].Trim(), line[1].Trim()), (parsed.TextOf(line[0]), SentenceTexts.For(language).TextOf(line[0])))
        );
    }

    [Theory]
    [InlineData("unit.frame.one = {n} frame\nunit.frame.one = {n} Bild\n", "'unit.frame.one'")]
    [InlineData("unit.frame.one = {n} frame\nunit.frame.many: {n} frames\n", "''")]
    [InlineData("unit.frame.one ={n} frame\n", "''")]
    public void A_words_file_with_a_key_twice_or_a_line_without_one_is_refused(string file, string what) =>
        Assert.Contains(what, Assert.Throws<FormatException>(() => SentenceTexts.Parse(file)).Message, StringComparison.Ordinal);
}
