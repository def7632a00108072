using System.Collections.Immutable;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Faults;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Schools;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Papers.Web;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Departments;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Terms;

/// <summary>Prints the papers of a school over all its productions, in memory: a page for the screen, and a workbook.</summary>
public static class TermPrinter
{
    /// <summary>The papers, by name.</summary>
    /// <param name="findings">What is found over all productions.</param>
    public static PrintedPapers Print(DepartmentBook book, ImmutableArray<Finding> findings, PrintOptions options)
    {
        var name = book.Department.School?.Name;
        var place = book.Department.Place;
        var school = new Production(place)
        {
            Title = name ?? new Located<string>("", place),
            Code = new Located<string>("", place),
            School = book.Department.School,
            Language = book.Department.Language?.Value ?? "en",
            Units = book.Department.Units?.Value ?? LengthUnit.Feet,
        };
        var language = PaperLanguage.For(school, options.Templates);
        var words = language.Words;
        var style = options.Templates.Find("style.css");
        var faults = style is null ? [] : StyleSheetCheck.Faults(style).Select(PaperFaults.Template).ToList();
        var mark = SchoolMark.Draw(school.School, words, faults);
        var title = school.Title.Value.Length > 0 ? school.Title.Value : words["term"];
        var made = DateOnly.FromDateTime(options.Made.DateTime);
        var head = new PaperHead(words.ForTemplates, title, "", "", new PaperFormat(school, words).Date(made), language.Language, [])
        {
            School = mark.Length == 0 ? null : new Markup(mark),
        };
        var tables = TermTables.Of(book, school, words);
        var sentences = SentenceTexts.For(school.Language);
        var facts = new TermFacts(
            head,
            new PaperFormat(school, words).Count(book.Shares.Length, "term-production"),
            tables,
            [.. findings.Select(f => f.Description.In(sentences))]
        );
        var result = TemplateEngine.Render(options.Templates, "term.html", facts);
        if (result.Document is not { } document)
        {
            return new PrintedPapers([], [.. faults, .. result.Faults.Select(PaperFaults.Template)]);
        }

        var setup = new PageSetup(Paper.A4)
        {
            HeadLeft = title,
            HeadRight = words["term"],
            FootLeft = words.Fill("foot", ("made", head.Made)),
            Words = new PageLabels(words["page-of"], words["done"], words["not-done"]),
        };
        var page = WebPage.Write(
            document,
            $"{title} – {words["term"]}",
            head.Language,
            (style?.Text ?? "") + SchoolStyle.Write(school.School),
            setup
        );
        return new PrintedPapers(
            [new PaperFile("index.html", [.. page]), new PaperFile("term.xlsx", [.. TermWorkbook.Make(tables, title, made)])],
            [.. language.Findings, .. faults]
        );
    }
}
