using System.Collections.Immutable;
using System.Text;
using Spoolbook.Checks.Running;
using Spoolbook.Reading;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Shipments;
using Spoolbook.Shoot.Departments;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Checks.Tests.Pages;

/// <summary>The files of a school and of the productions below it, and what is found in all of them together.</summary>
sealed record DepartmentFiles(ImmutableSortedDictionary<string, string> Files)
{
    const string Production = "production.yaml";

    // The day of making in every test.
    static readonly DateOnly Today = new(2026, 10, 5);

    /// <summary>The sample school among the acceptance tests.</summary>
    public static DepartmentFiles Sample { get; } = Under(Path.Combine(Repository.Root, "tests", "Spoolbook.Acceptance", "department"));

    /// <summary>The productions' folders.</summary>
    public IEnumerable<string> Productions =>
        Files.Keys.Where(f => f.EndsWith("/" + Production, StringComparison.Ordinal)).Select(f => f[..^(Production.Length + 1)]);

    public static DepartmentFiles Under(string folder) =>
        new(
            Directory
                .EnumerateFiles(folder, "*.yaml", SearchOption.AllDirectories)
                .ToImmutableSortedDictionary(
                    file => Path.GetRelativePath(folder, file).Replace('\\', '/'),
                    file => File.ReadAllText(file).ReplaceLineEndings("\n"),
                    StringComparer.Ordinal
                )
        );

    /// <summary>Two productions, ferry and goat, and a school without kit, with an example laid over them.</summary>
    public static DepartmentFiles With(string example)
    {
        var files = new Dictionary<string, string>(StringComparer.Ordinal) { [Department.FileName] = "spoolbook: 1\n" };
        foreach (var name in (string[])["ferry", "goat"])
        {
            foreach (var (file, text) in BaseProduction.Untouched)
            {
                files[$"{name}/{file}"] = text.Replace("PIER", name.ToUpperInvariant(), StringComparison.Ordinal)
                    .Replace("The Short Pier", $"The {name}", StringComparison.Ordinal);
            }
        }

        foreach (var (file, overlay) in BaseProduction.Parts(example))
        {
            files[file] = BaseProduction.Merge(files.GetValueOrDefault(file, ""), overlay);
        }

        files.Remove("");
        return new(files.Where(f => f.Key != "rolls/r01.yaml").ToImmutableSortedDictionary(StringComparer.Ordinal));
    }

    /// <summary>The lines that an example marks with a check's name.</summary>
    public IEnumerable<(string File, int Line, string Check)> Marks => BaseProduction.Marks(Files.Select(f => (f.Key, f.Value)));

    /// <summary>What is found in the school's file, and over all productions.</summary>
    public (ImmutableArray<Finding> Findings, DepartmentBook Book) Run()
    {
        var read = DepartmentFile.Read(TextFiles.Of((Department.FileName, Files[Department.FileName])));
        var book = DepartmentBook.Sum(read.Department!, Productions.Select(name => Share(name)), Today);
        return (FindingOrder.Sort([.. read.Findings, .. CheckRunner.OnDepartment(book)]), book);
    }

    /// <summary>All findings in one production.</summary>
    public WholeRun Run(string production) => WholeRun.Of(Of(production));

    /// <summary>The findings as on the pages.</summary>
    public string Report()
    {
        var text = new StringBuilder();
        foreach (var finding in Run().Findings)
        {
            WholeRun.Add(text, finding, Marked);
        }

        return text.ToString();
    }

    /// <summary>What is found before a consignment of all productions goes, on the day of making.</summary>
    public ImmutableArray<Finding> Shipping()
    {
        var read = Productions
            .Select(name => (Name: name, ProductionReader.Read(Of(name)).Production, Errors: WholeRun.Of(Of(name)).Findings))
            .ToList();
        var records = Files.Where(f => f.Key.EndsWith("/" + ShipmentFile.Name, StringComparison.Ordinal));
        var plan = ShipmentPlan.Make(
            [
                .. from production in read
                where production.Production is not null
                let hasErrors = production.Errors.Any(f => f.Level == Level.Error)
                select new SchoolProduction(production.Name, Tolerances.BooksOf(production.Production), hasErrors),
            ],
            [.. records.Select(f => ShipmentFile.Read(f.Key, TextDecoder.Decode(Encoding.UTF8.GetBytes(f.Value))).Record!)],
            new ShipmentWishes(Today)
        );
        return [.. read.Where(p => p.Production is null).Select(p => ShipmentFaults.Unreadable(p.Name)), .. plan.Faults];
    }

    /// <summary>The findings of shipping as on the pages.</summary>
    public string ShippingReport()
    {
        var text = new StringBuilder();
        foreach (var finding in Shipping())
        {
            WholeRun.Add(text, finding, Marked);
        }

        return text.ToString();
    }

    ProductionShare Share(string name)
    {
        var read = ProductionReader.Read(Of(name));
        return ProductionShare.Of(name, Tolerances.BooksOf(read.Production!), WholeRun.Of(Of(name)).Findings);
    }

    /// <summary>The files of one production, with the school's above them.</summary>
    public TextFiles Of(string name) =>
        TextFiles
            .Of([
                .. Files
                    .Where(f => f.Key.StartsWith(name + "/", StringComparison.Ordinal))
                    .Select(f => (f.Key[(name.Length + 1)..], f.Value))
                    .Append((Above(name), Files[Department.FileName])),
            ])
            .At(name);

    static string Above(string name) => string.Concat(name.Split('/').Select(_ => "../")) + Department.FileName;

    string Marked(Place place)
    {
        var line = Files.GetValueOrDefault(place.File, "").Split('\n').ElementAtOrDefault(place.Line - 1) ?? "";
        return WholeRun.Marked(line, place);
    }
}
