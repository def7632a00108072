using Spoolbook.Entry.Tests;

namespace Spoolbook.Acceptance.Importing;

/// <summary>A workbook in a production's own words can be imported with the same words.</summary>
public sealed class OwnWordsTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_users_own_head_is_read_with_the_words_it_was_printed_with()
    {
        var production = InGerman();
        Directory.CreateDirectory(_bench.PathOf("own"));
        File.WriteAllText(_bench.PathOf("own/words.de.txt"), "book.head.mark = Klappe [Ja/Nein]\nmark-good = Ja\n");
        Assert.Equal(0, _bench.Run("make", production, "--out", "papers", "--templates", "own").Status);
        var typed = new TakesBook(File.ReadAllBytes(_bench.PathOf("papers/footage.xlsx")), head =>
            head == "Mark" ? "Klappe [Ja/Nein]" : Called(head)
        )
            .Type("R02 2A/4", "Mark", "Ja")
            .Saved();
        File.WriteAllBytes(_bench.PathOf("typed.xlsx"), typed);

        var (_, without, _) = _bench.Run("import", "typed.xlsx", production, "--dry-run");
        var (status, with, _) = _bench.Run("import", "typed.xlsx", production, "--dry-run", "--templates", "own");

        Assert.Contains("The column 'Klappe [Ja/Nein]' is not read.", without, StringComparison.Ordinal);
        Assert.Equal(0, status);
        Assert.Contains("mark: good", with, StringComparison.Ordinal);
    }

    static string Called(string head) => Words.In("de")["book.head." + head.ToLowerInvariant().Replace(' ', '-')];

    string InGerman()
    {
        var production = _bench.CopyOf(Repository.Sample);
        var sheet = Path.Combine(production, "production.yaml");
        File.WriteAllText(sheet, File.ReadAllText(sheet).Replace("language: en", "language: de", StringComparison.Ordinal));
        return production;
    }
}
