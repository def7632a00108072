using System.Text.RegularExpressions;

namespace Spoolbook.Papers.Tests.Workbook.Reference;

/// <summary>The reference page, read without any knowledge of the code.</summary>
sealed partial class ReferenceText
{
    public ReferenceText()
    {
        foreach (
            var section in File.ReadAllText(Path.Combine(Repository.Root, "src/Spoolbook.Papers/Workbook/WORKBOOK.md"))
                .Split("\n## ")
                .Skip(1)
        )
        {
            var title = section[..section.IndexOf('\n', StringComparison.Ordinal)];
            var rows = section.Split('\n').Where(l => l.StartsWith("| ", StringComparison.Ordinal)).Skip(1).Select(Cells).ToList();
            if (title == "How cells are shown")
            {
                Formats = rows.ToDictionary(r => r[0], r => r[1]);
            }
            else if (title == "Figures")
            {
                Summary = [.. rows.Select(r => new SummaryLine(r[0], Formulas(r[2]).SingleOrDefault(), Bare(r[4])))];
            }
            else if (Table().Match(section) is { Success: true } table)
            {
                Sheets.Add(
                    new SheetText(
                        title,
                        table.Groups[1].Value,
                        table.Groups[3].Value,
                        [.. rows.Select(r => new ColumnText(r[0], Bare(r[1]), r[4], r[5], Formulas(r[4])) { German = r[2] })]
                    )
                    {
                        German = table.Groups[2].Value,
                    }
                );
            }
        }
    }

    public IReadOnlyDictionary<string, string> Formats { get; } = new Dictionary<string, string>();

    public IReadOnlyList<SummaryLine> Summary { get; } = [];

    public List<SheetText> Sheets { get; } = [];

    static List<string> Cells(string row) =>
        [.. Bar().Split(row.Trim()[1..^1]).Select(c => c.Trim().Replace("\\|", "|", StringComparison.Ordinal))];

    static List<string> Formulas(string cell) => [.. Formula().Matches(cell).Select(m => m.Groups[1].Value)];

    static string Bare(string cell) => cell.Trim('`');

    [GeneratedRegex(@"(?<!\\)\|")]
    private static partial Regex Bar();

    [GeneratedRegex("`=([^`]+)`")]
    private static partial Regex Formula();

    [GeneratedRegex("^Table `([A-Za-z]+)`, in German ([^,]+), on the sheet ([^.]+)\\.", RegexOptions.Multiline)]
    private static partial Regex Table();
}

/// <summary>The page's text on a line of the summary.</summary>
sealed record SummaryLine(string Label, string? Formula, string Name);

/// <summary>The page's text on a sheet.</summary>
sealed record SheetText(string Name, string Table, string On, IReadOnlyList<ColumnText> Columns)
{
    /// <summary>Its name in a German workbook.</summary>
    public required string German { get; init; }
}

/// <summary>The page's text on a column.</summary>
sealed record ColumnText(string Letters, string Head, string Written, string Shown, IReadOnlyList<string> Formulas)
{
    /// <summary>Its head in a German workbook.</summary>
    public required string German { get; init; }
}
