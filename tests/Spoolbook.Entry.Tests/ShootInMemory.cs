using Spoolbook.Importing;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Workbook;
using Spoolbook.Reading;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Entry.Tests;

/// <summary>A production in memory, its workbook, and the result of importing a table.</summary>
sealed class ShootInMemory
{
    readonly IProductionFiles _files;

    /// <param name="language">The language of the workbook; by default the production's.</param>
    public ShootInMemory(IProductionFiles files, string? language = null)
    {
        _files = files;
        var read = ProductionReader.Read(files);
        Book = BookKeeper.Keep(read.Production!);
        Workbook = FootageWorkbook.Make(
            new LedgerSource(Books.Of(read.Production!), read.Findings, [], new DateOnly(2026, 10, 6)),
            Words.In(language ?? Book.Production.Language)
        );
    }

    public ShootBook Book { get; }

    public byte[] Workbook { get; }

    public ImportPlan Import(byte[] table, string name = "footage.xlsx") =>
        TakeImport.Plan(name, table, TakesTable.Heads(Book.Production, new HouseTemplates()), Book, f => _files.Open(f).Text);

    /// <summary>The lines that an import removes and adds.</summary>
    public IEnumerable<string> Difference(byte[] table, string name = "footage.xlsx")
    {
        var plan = Import(table, name);
        Assert.Empty(plan.Refused);
        Assert.Empty(plan.Against(After(plan)));
        return
        [
            .. plan
                .Files.SelectMany(f => UnifiedDiff.Write(f))
                .Where(l =>
                    l[0] is '+' or '-' && !l.StartsWith("+++", StringComparison.Ordinal) && !l.StartsWith("---", StringComparison.Ordinal)
                ),
        ];
    }

    /// <summary>The book of the changed files.</summary>
    public ShootBook After(ImportPlan plan) => BookKeeper.Keep(ProductionReader.Read(new ChangedFiles(_files, plan.Files)).Production!);
}
