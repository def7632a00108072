using System.Collections.Immutable;
using System.Text;
using Spoolbook.Papers.CanLabels;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Faults;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Schools;
using Spoolbook.Papers.Typesetting;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Papers.Web;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Shipments;

/// <summary>Prints the papers of a consignment, in memory: order, labels, packing list, and both manifests.</summary>
public sealed class ShipmentPrinter
{
    readonly ShipmentSource _source;
    readonly PrintOptions _options;
    readonly Production _lead;
    readonly string _style;
    readonly PageInks _inks;
    readonly List<Finding> _faults = [];

    ShipmentPrinter(ShipmentPapers papers, PrintOptions options)
    {
        _options = options;
        _lead = ShipmentSource.LeadOf(papers.Shipment);
        var language = PaperLanguage.For(_lead, options.Templates);
        _faults.AddRange(language.Findings);
        var style = options.Templates.Find("style.css");
        if (style is not null)
        {
            _faults.AddRange(StyleSheetCheck.Faults(style).Select(PaperFaults.Template));
        }

        (_inks, var strange) = PaperInks.Choose(style, _lead.School);
        _faults.AddRange(strange.Select(PaperFaults.Template));
        _style = (style?.Text ?? "") + SchoolStyle.Write(_lead.School);
        var school = SchoolMark.Draw(_lead.School, language.Words, _faults);
        var made = new PaperFormat(_lead, language.Words).Date(DateOnly.FromDateTime(options.Made.DateTime));
        var head = new PaperHead(language.Words.ForTemplates, papers.Shipment.Lab, papers.Shipment.Id, "", made, language.Language, [])
        {
            School = school.Length == 0 ? null : new Markup(school),
        };
        _source = new ShipmentSource(papers, language.Words, head);
    }

    /// <summary>All of them, by name, the record first.</summary>
    public static PrintedPapers Print(ShipmentPapers papers, PrintOptions options)
    {
        try
        {
            return new ShipmentPrinter(papers, options).Print();
        }
        catch (MissingWordException missing)
        {
            return new PrintedPapers([], [PaperFaults.MissingWord(missing.Key, "")]);
        }
    }

    PrintedPapers Print()
    {
        var papers = _source.Papers;
        var paper = _lead.Paper == PaperSize.A4 ? Paper.A4 : Paper.Letter;
        List<PaperFile> files =
        [
            new PaperFile("consignment.yaml", Bytes(papers.Record)),
            new PaperFile("manifest.csv", Bytes(Manifest.Csv(papers))),
            .. Page("order", "shipment-order.html", _source.Words["lab-order"], ShipmentOrderFacts.Of(_source), paper, hasPage: true),
            .. Page(
                "packing-list",
                "shipment-packing-list.html",
                _source.Words["shipment-packing-list"],
                PackingListFacts.Of(_source),
                paper
            ),
            .. Page("labels", "can-labels.html", _source.Words["can-labels"], Labels(), LabelGrid.PaperOf(_source.Sheet, _lead.Paper)),
        ];
        var digests = files.Select(f => (f.Name, f.Digest)).OrderBy(f => f.Name, StringComparer.Ordinal);
        files.Add(new PaperFile("manifest.json", [.. Manifest.Json(papers, digests)]));
        return new PrintedPapers([.. files], [.. _faults]);
    }

    CanLabelsFacts Labels() =>
        new(_source.Head)
        {
            Sheet = LabelGrid.Of(_source.Sheet, _lead.Paper, 1),
            Gauge = _lead.Gauge.Name,
            Labels = [.. _source.Shipment.Cans.Select(_source.Label)],
        };

    IEnumerable<PaperFile> Page(string name, string template, string title, PaperFacts facts, Paper paper, bool hasPage = false)
    {
        var result = TemplateEngine.Render(_options.Templates, template, facts);
        if (result.Document is not { } document)
        {
            _faults.AddRange(result.Faults.Select(PaperFaults.Template));
            return [];
        }

        var whole = $"{_source.Shipment.Id} – {title}";
        var setup = new PageSetup(paper)
        {
            HeadLeft = $"{_source.Shipment.Id} · {_source.Shipment.Lab}",
            HeadRight = title,
            FootLeft = _source.Words.Fill("foot", ("made", _source.Head.Made)),
            Inks = _inks,
            Words = new PageLabels(_source.Words["page-of"], _source.Words["done"], _source.Words["not-done"]),
        };
        var pdf = PdfRenderer.Render(document, setup, new PdfMeta(whole, _source.Shipment.Lab, _source.Head.Language, _options.Made));
        (string Paper, PageWarning Warning)[] warnings = [.. pdf.Warnings.Select(w => (name + ".pdf", w))];
        _faults.AddRange(
            warnings.Where(w => w.Warning.Kind == PageWarningKind.Overflow).Select(w => PaperFaults.Overflow(w.Paper, w.Warning))
        );
        _faults.AddRange(LetterFaults.Find(_lead, [.. warnings]));
        return
        [
            new PaperFile(name + ".pdf", [.. pdf.Bytes]),
            .. hasPage
                ? [new PaperFile(name + ".html", [.. WebPage.Write(document, whole, _source.Head.Language, _style, setup)])]
                : (PaperFile[])[],
        ];
    }

    static ImmutableArray<byte> Bytes(string text) => [.. Encoding.UTF8.GetBytes(text)];
}
