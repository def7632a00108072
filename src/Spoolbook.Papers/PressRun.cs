using System.Collections.Immutable;
using System.Text;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Pdf;
using Spoolbook.Papers.Workbook;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers;

/// <summary>One run of the press: gathers the facts of each paper, and prints page and PDF of it.</summary>
internal sealed class PressRun
{
    readonly Books _books;
    readonly ImmutableArray<Finding> _findings;
    readonly ImmutableArray<Waived> _waived;
    readonly PressOptions _options;
    readonly Wording _say;
    readonly PaperHead _head;
    readonly string _style;
    readonly PageInks _inks;
    readonly ImmutableArray<Finding> _notes;
    readonly ImmutableArray<Finding> _faults;

    public PressRun(Books books, ImmutableArray<Finding> findings, ImmutableArray<Waived> waived, PressOptions options)
    {
        (_books, _findings, _waived, _options) = (books, findings, waived, options);
        var production = books.Shoot.Production;
        var language = LanguageWords.For(production, options.Templates);
        _notes = language.Findings;
        var words = language.Words;
        _say = new Wording(production, words);
        var style = options.Templates.Find("style.css");
        _style = style?.Text ?? "";
        var faults = style is null ? [] : StyleSheetCheck.Faults(style).Select(PaperFaults.Template).ToList();
        var school = Pictures.SchoolMark.Draw(production.School, words, faults);
        (_inks, var strange) = PaperInks.Of(style, production.School);
        faults.AddRange(strange.Select(PaperFaults.Template));
        _style += SchoolStyle.Of(production.School);
        _head = new PaperHead(
            words.ForTemplates,
            production.Title.Value,
            production.Code.Value,
            production.Invented?.Value ?? "",
            _say.Date(DateOnly.FromDateTime(options.Made.DateTime)),
            language.Language,
            [.. findings.Where(f => f.Level == Level.Error).Select(f => $"{f.Place}: {f.Message}")])
        {
            School = school.Length == 0 ? null : new Markup(school),
        };
        _faults = [.. faults];
    }

    /// <summary>Prints everything. The workbook is the slowest, so it starts first, beside the pages.</summary>
    public PrintedPapers Print()
    {
        var source = new LedgerSource(_books, _findings, _waived, DateOnly.FromDateTime(_options.Made.DateTime));
        var workbook = Task.Run(() => FootageWorkbook.Make(source, _say.Words));
        var jobs = Jobs().ToList();
        var printed = new Printed[jobs.Count];
        Parallel.For(0, jobs.Count, i => printed[i] = Print(jobs[i]));
        var files = printed.SelectMany(p => p.Files)
            .Append(new PaperFile(PaperNames.Ledger + ".json", Bytes(LedgerWriter.Write(source))))
            .Append(new PaperFile(PaperNames.Workbook + ".xlsx", [.. workbook.GetAwaiter().GetResult()]))
            .OrderBy(f => f.Name, StringComparer.Ordinal);
        return new PrintedPapers([.. files], [.. _notes, .. _faults, .. PaperFaults.OfLabels(_books.Shoot.Production), .. printed.SelectMany(p => p.Faults), .. LetterFaults.Of(_books.Shoot.Production, [.. printed.SelectMany(p => p.Warnings)]), .. LabelFaults.Of(_books.Shoot.Production, [.. printed.SelectMany(p => p.Warnings)])]);
    }

    IEnumerable<Job> Jobs()
    {
        var words = _say.Words;
        foreach (var roll in _books.Shoot.Rolls)
        {
            var title = words["camera-report"] + " " + roll.Roll.Name.Value;
            yield return new Job(PaperNames.CameraReport(roll.Roll), "camera-report.html", title, () => CameraReport.Of(roll, _books.Shoot, WaiversOf(roll), _head, _say));
        }

        foreach (var (name, title, sending) in LabOrders)
        {
            yield return new Job(name, "lab-order.html", title, () => LabOrder.Of(sending, _books.Shoot, _books.Cost, WaiversOf, _head, _say));
        }

        yield return new Job(PaperNames.CanLabels, "can-labels.html", words["can-labels"], () => CanLabelSheet.Of(_books.Shoot, _books.Stock, _head, _say))
        {
            Paper = LabelGrid.PaperOf(CanLabelSheet.SheetOf(_books.Shoot.Production), _books.Shoot.Production.Paper),
        };
        yield return new Job(PaperNames.WrapSummary, "wrap-summary.html", words["wrap-summary"], Summary);
        if (HasKit)
        {
            yield return new Job(PaperNames.KitList, "kit-list.html", words["kit-list"], () => new KitListFacts(_head, KitFacts.Of(_books.Kit, _say)));
        }

        yield return new Job(PaperNames.LogSheets, "log-sheets.html", words["log-sheets"], () => LogSheets.Of(_books, _head, _say));
        foreach (var body in ExposureCards.Bodies(_books.Shoot.Production))
        {
            var name = PaperNames.ExposureCard(body);
            ExposureCardFacts Card() => ExposureCards.Of(body, _books.Shoot.Production, _head, _say);
            yield return new Job(name, "exposure-card.html", words["exposure-card"] + " " + body.Name.Value, Card);
            yield return new Job(name + "-pocket", "exposure-card.html", words["exposure-card-pocket"] + " " + body.Name.Value, () => Card() with { Pocket = true }) { Paper = Paper.A6, HasPage = false };
        }

        yield return new Job(PaperNames.Index, "index.html", words["index"], Summary) { Printed = false };
    }

    // One consignment, which is the common case, needs no number.
    IEnumerable<(string Name, string Title, Sending Sending)> LabOrders
    {
        get
        {
            var orders = LabOrder.Orders(_books.Cost);
            return orders.Select(s => (PaperNames.LabOrder(orders.Length > 1 ? s.Number : null), orders.Length > 1 ? $"{_say.Words["lab-order"]} {Wording.Number(s.Number)}" : _say.Words["lab-order"], s));
        }
    }

    bool HasKit => _books.Kit.Pieces.Length > 0;

    WrapSummaryFacts Summary() => WrapSummary.Of(_books, _findings, [.. _waived.Select(Waiver)], Links(), _head, _say) with
    {
        Reports = [.. _books.Shoot.Rolls.Select(r => Link(r.Roll.Name.Value, PaperNames.CameraReport(r.Roll)))],
        Rules = RuleFacts.Of(_options.Rules, _say),
    };

    ImmutableArray<PaperLink> Links() =>
    [
        .. LabOrders.Select(o => Link(o.Title, o.Name)),
        Link(_say.Words["can-labels"], PaperNames.CanLabels),
        Link(_say.Words["wrap-summary"], PaperNames.WrapSummary),
        .. HasKit ? [Link(_say.Words["kit-list"], PaperNames.KitList)] : (PaperLink[])[],
        Link(_say.Words["log-sheets"], PaperNames.LogSheets),
        .. ExposureCards.Bodies(_books.Shoot.Production).Select(b => Link(_say.Words["exposure-card"] + " " + b.Name.Value, PaperNames.ExposureCard(b))),
    ];

    static PaperLink Link(string what, string name) => new(what, name + ".html", name + ".pdf");

    ImmutableArray<WaiverFacts> WaiversOf(RollBook roll) => [.. _waived.Where(w => w.Finding.Roll == roll.Roll.Name.Value).Select(Waiver)];

    WaiverFacts Waiver(Waived waived) => new(waived.Finding.Check, waived.Finding.Message, waived.Waiver.Reason?.Value ?? "", _say.Person(waived.Waiver.By?.Value));

    Printed Print(Job job)
    {
        var result = TemplateEngine.Render(_options.Templates, job.Template, job.Facts());
        if (result.Document is not { } document)
        {
            return new Printed([], [.. result.Faults.Select(PaperFaults.Template)]);
        }

        var title = _head.Production + " – " + job.Title;
        var page = new PaperFile(job.Name + ".html", Bytes(WebPage.Of(document, title, _head.Language, _style)));
        if (!job.Printed)
        {
            return new Printed([page], []);
        }

        var pdf = PdfRenderer.Render(document, Setup(job), new PdfMeta(title, _head.Production, _head.Language, _options.Made));
        return new Printed(
            [.. job.HasPage ? [page] : (PaperFile[])[], new PaperFile(job.Name + ".pdf", [.. pdf.Bytes])],
            [.. pdf.Warnings.Where(w => w.Kind == PageWarningKind.Overflow).Select(w => PaperFaults.Overflow(job.Name + ".pdf", w))])
        {
            Warnings = [.. pdf.Warnings.Where(w => w.Kind != PageWarningKind.Overflow).Select(w => (job.Name + ".pdf", w))],
        };
    }

    PageSetup Setup(Job job) => new(job.Paper ?? (_books.Shoot.Production.Paper == PaperSize.A4 ? Paper.A4 : Paper.Letter))
    {
        HeadLeft = _head.Production + " · " + _head.Code,
        HeadRight = job.Title,
        FootLeft = _say.Words.Fill("foot", ("made", _head.Made)),
        Inks = _inks,
        Stamp = _head.Draft ? _say.Words["draft"] : "",
        Words = new PageWords(_say.Words["page-of"], _say.Words["done"], _say.Words["not-done"]),
    };

    static ImmutableArray<byte> Bytes(string text) => [.. Encoding.UTF8.GetBytes(text)];

    sealed record Job(string Name, string Template, string Title, Func<PaperFacts> Facts)
    {
        public bool Printed { get; init; } = true;

        // The production's own unless another is named.
        public Paper? Paper { get; init; }

        // A pocket card's page is the same as the large one's.
        public bool HasPage { get; init; } = true;
    }

    sealed record Printed(ImmutableArray<PaperFile> Files, ImmutableArray<Finding> Faults)
    {
        // Texts that are not shown as they were written; where they stand in the production is found for all papers at once.
        public ImmutableArray<(string Paper, PageWarning Warning)> Warnings { get; init; } = [];
    }
}
