using System.Collections.Immutable;
using System.Text;
using Spoolbook.Checks.Accepting;
using Spoolbook.Checks.Running;
using Spoolbook.Papers;
using Spoolbook.Papers.Pages;
using Spoolbook.Reading;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Tests.Pages;

/// <summary>All findings in a production, from its files on.</summary>
sealed record WholeRun(ImmutableArray<Finding> Findings, ImmutableArray<Waived> Waived, SourceTexts Sources)
{
    static readonly DateTimeOffset Made = new(2026, 10, 5, 12, 0, 0, TimeSpan.Zero);

    public static WholeRun Of(IProductionFiles files) => Of(files, null);

    /// <summary>The findings with the papers printed too, with the templates of the example.</summary>
    public static WholeRun Printed(ExampleFiles files) => Of(files, files);

    static WholeRun Of(IProductionFiles files, ExampleFiles? printing)
    {
        var read = ProductionReader.Read(files);
        if (read.Production is null)
        {
            return new WholeRun(read.Findings, [], read.Sources);
        }

        var records = CheckRunner.OnRecords(read.Production, read.Findings);
        var books = Tolerances.BooksOf(read.Production);
        var later = CheckRunner.OnBook(books, [.. read.Findings, .. records]);
        ImmutableArray<Finding> all = [.. read.Findings, .. records, .. later];
        var (left, waived) = Waivers.Apply(all, read.Production);
        if (printing is not null)
        {
            var printed = PaperPrinter.Print(books, left, waived, new PrintOptions(Made, new HouseTemplates(printing)));
            (left, waived) = Waivers.Apply(all, read.Production, printed.Faults);
        }

        return new WholeRun(left, waived, read.Sources);
    }

    /// <summary>The findings as on the pages: level and marked characters, sentence, figures, other places, help.</summary>
    public string Report()
    {
        var text = new StringBuilder();
        foreach (var finding in Findings)
        {
            Add(text, finding, Marked);
        }

        return text.ToString();
    }

    /// <summary>One finding as on the pages.</summary>
    /// <param name="marked">The characters of a place.</param>
    public static void Add(StringBuilder text, Finding finding, Func<Place, string> marked)
    {
        text.Append($"{finding.Level.ToString().ToLowerInvariant()} {marked(finding.Place)}: {finding.Message}\n");
        text.AppendJoin("", finding.Figures.Select(f => $"    {f.Name}: {f.Value}\n"));
        text.AppendJoin("", finding.Others.Select(o => $"    see {marked(o.Place)}: {o.Message}\n"));
        text.Append(finding.Help.Length == 0 ? "" : $"    help: {finding.Help}\n");
    }

    /// <summary>The findings, a line each.</summary>
    public string Listed() =>
        string.Concat(Findings.Select(f => $"{f.Place} {f.Level.ToString().ToLowerInvariant()} {f.Check}: {f.Message}\n"));

    string Marked(Place place) => Marked(Sources.Line(place.File, place.Line) ?? "", place);

    /// <summary>The characters of a place in its line, in backquotes.</summary>
    public static string Marked(string line, Place place)
    {
        const int most = 32;
        var from = Math.Min(place.Column - 1, line.Length);
        var marked = line.Substring(from, Math.Min(place.Length, line.Length - from));
        return "`" + (marked.Length > most ? marked[..most] + "…" : marked) + "`";
    }
}
