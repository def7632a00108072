using CsCheck;
using Spoolbook.Papers.Tests.Ledger;
using Spoolbook.Reading.Files;

namespace Spoolbook.Entry.Tests;

/// <summary>The workbook's takes are the roll files' takes: importing them changes nothing.</summary>
public class RoundTripTests
{
    public static TheoryData<string> Productions =>
        [Repository.Sample, .. TestFolders.NamesIn(TestFolders.Clean).Select(n => Path.Combine(TestFolders.Clean, n))];

    [Theory]
    [MemberData(nameof(Productions))]
    public void An_untouched_workbook_changes_no_byte(string folder) => ComesBack(new FolderFiles(TestFolders.ProductionIn(folder)));

    [Fact]
    public void That_holds_for_any_shoot() => GeneratedShoots.Yaml.Sample(yaml => ComesBack(TextFiles.OneFile(yaml)), iter: 40, threads: 1);

    static void ComesBack(IProductionFiles files)
    {
        var shoot = new ShootInMemory(files);

        var plan = shoot.Import(shoot.Workbook);

        Assert.Empty(plan.Refused);
        Assert.Empty(plan.Files);
        Assert.Empty(plan.Against(shoot.Book));
        Assert.Equal((0, 0, shoot.Book.Counted.Sum(r => r.Layers.Length)), (plan.New, plan.Changed, plan.Same));
        Assert.DoesNotContain(plan.Notes, n => n.Where.Contains('!', StringComparison.Ordinal));
    }
}
