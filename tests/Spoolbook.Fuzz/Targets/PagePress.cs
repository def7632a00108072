using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Typesetting;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Papers.Web;
using Spoolbook.Papers.Wording;

namespace Spoolbook.Fuzz.Targets;

/// <summary>Single papers of the small production, printed without the others: a whole run takes too long to be spoilt often.</summary>
internal sealed class PagePress
{
    readonly PaperHead _head;
    readonly PaperLinks _links;

    /// <param name="school">The mark in the head of each paper; empty for none.</param>
    public PagePress(CheckedProduction found, Translations words, string language, string school = "")
    {
        var production = found.Books!.Production;
        var format = new PaperFormat(production, words);
        _head = new PaperHead(
            words.ForTemplates,
            production.Title.Value,
            production.Code.Value,
            production.Invented?.Value ?? "",
            format.Date(new DateOnly(2026, 10, 6)),
            language,
            []
        )
        {
            School = school.Length == 0 ? null : new Markup(school),
        };
        Jobs =
        [
            .. Papers.PaperList.All.SelectMany(p =>
                p.Jobs(new PaperSource(found.Books, found.Findings, found.Waived, [], [], _head, format))
            ),
        ];
        _links = PaperLinks.To(Jobs);
    }

    /// <summary>All that could be printed.</summary>
    public IReadOnlyList<PaperJob> Jobs { get; }

    /// <summary>Prints a paper as page and PDF, and says how far it came.</summary>
    public IEnumerable<string> Print(PaperJob job, ITemplateSource templates, string style)
    {
        var result = TemplateEngine.Render(templates, job.Template, job.Facts(_links));
        if (result.Document is not { } document)
        {
            // What a name or a number is, is no news.
            return result.Faults.Select(f => string.Join(' ', f.Reason.Split(' ').Where(w => w.All(char.IsLetter)).Take(3)));
        }

        var setup = new PageSetup(job.Paper ?? Paper.A4)
        {
            HeadLeft = _head.Production,
            HeadRight = job.Title,
            FootLeft = _head.Made,
        };
        var pdf = PdfRenderer.Render(document, setup, new PdfMeta(job.Title, _head.Production, _head.Language, Printing.Made));
        _ = WebPage.Write(document, job.Title, _head.Language, style, setup);
        return pdf.Warnings.Select(w => w.Kind.ToString()).Distinct().Append("printed " + job.Template);
    }
}
