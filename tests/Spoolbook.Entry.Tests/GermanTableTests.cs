using System.Text;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Workbook;
using Spoolbook.Reading.Files;

namespace Spoolbook.Entry.Tests;

/// <summary>A table of takes is read in any language that the house prints in, whatever the production's is.</summary>
public sealed class GermanTableTests
{
    static readonly ShootInMemory _english = new(new FolderFiles(Repository.Sample));
    static readonly ShootInMemory _german = new(new FolderFiles(Repository.Sample), "de");

    [Fact]
    public void An_untouched_German_workbook_changes_no_byte_of_an_English_production()
    {
        var plan = _german.Import(_german.Workbook);

        Assert.Empty(plan.Refused);
        Assert.Empty(plan.Files);
        Assert.Equal(_german.Book.Counted.Sum(r => r.Layers.Length), plan.Same);
        Assert.DoesNotContain(plan.Notes, n => n.Where.Contains('!', StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Mark", "G", "K")]
    [InlineData("Mark", "NG", "nk")]
    [InlineData("Mark", "good", "good")]
    [InlineData("Lens", "10mm", "10mm")]
    [InlineData("Speed", 48, 48)]
    [InlineData("Remarks", "-", "-")]
    public void What_is_typed_under_a_German_head_does_what_it_does_under_the_English_one(string head, object english, object german) =>
        Assert.Equal(
            _english.Difference(new TakesBook(_english.Workbook).Type("R02 2A/4", head, english).Saved()),
            _german.Difference(new TakesBook(_german.Workbook, Called).Type("R02 2A/4", head, german).Saved())
        );

    [Fact]
    public void A_plain_table_may_have_heads_of_either_language_and_of_both() =>
        Assert.All(
            (string[])["Rolle;Szene;Einstellung;Take;Wertung;Bis", "Roll;Scene;Shot;Take;Mark;To", "ROLLE;Scene;einstellung;Take;Mark;bis"],
            heads =>
                Assert.Equal(
                    "+  - take: {scene: 1, shot: A, take: 5, to: 60+10, mark: ng}",
                    Assert.Single(_english.Difference(Encoding.UTF8.GetBytes(heads + "\nR02;1;A;4;;\nR02;1;A;5;NK;60,25\n"), "takes.csv"))
                )
        );

    [Fact]
    public void Messages_call_heads_and_marks_as_the_production_does()
    {
        var shoot = new ShootInMemory(InGerman());
        var book = new TakesBook(shoot.Workbook, Called).Type("R02 2A/4", "Mark", "OK").Type("R02 1A/4", "Scene", null);

        var plan = shoot.Import(book.Saved());

        Assert.Equal(["The row has no Szene.", "'OK' is no mark."], plan.Refused.Select(r => r.Message));
        Assert.Equal("Write K (good), R (hold), NK (ng), T (test).", plan.Refused[1].Help);
    }

    [Fact]
    public void A_head_or_mark_means_the_same_in_every_language()
    {
        var vocabulary = TakesVocabulary.Of(_english.Book.Production, new HouseTemplates());
        Assert.All(vocabulary.Heads.GroupBy(h => h.Called, StringComparer.OrdinalIgnoreCase), same =>
            Assert.Single(same.Select(h => h.House).Distinct())
        );
        Assert.All(vocabulary.Marks.GroupBy(m => m.Code, StringComparer.OrdinalIgnoreCase), same =>
            Assert.Single(same.Select(m => m.Mark).Distinct())
        );
        Assert.Equal(
            2 * Enum.GetValues<TakeColumn>().Length,
            vocabulary.Heads.GroupBy(h => h.House).Sum(h => h.Count()) + vocabulary.Heads.GroupBy(h => h.House).Count(h => h.Count() == 1)
        );
    }

    static string Called(string head) => Words.In("de")["book.head." + head.ToLowerInvariant().Replace(' ', '-')];

    // The sample as a production that prints in German.
    static TextFiles InGerman() =>
        TextFiles.Of([
            .. new FolderFiles(Repository.Sample).Names.Select(name =>
                (
                    name,
                    File.ReadAllText(Path.Combine(Repository.Sample, name))
                        .Replace("language: en", "language: de", StringComparison.Ordinal)
                )
            ),
        ]);
}
