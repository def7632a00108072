using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.ExceptionServices;
using System.Runtime.InteropServices;
using System.Text;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Faults;
using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Schools;
using Spoolbook.Papers.Typesetting;
using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Papers.Web;
using Spoolbook.Papers.Wording;
using Spoolbook.Papers.Workbook;
using Spoolbook.Papers.WrapSummaries;
using Spoolbook.Pdf.Documents;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers;

/// <summary>Prints every paper of a shoot, in memory: page and PDF of each, the ledger and the workbook.</summary>
public sealed class PaperPrinter
{
    readonly Books _books;
    readonly ImmutableArray<Finding> _findings;
    readonly ImmutableArray<Waived> _waived;
    readonly PrintOptions _options;
    readonly PaperFormat _format;
    readonly PaperHead _head;
    readonly string _style;
    readonly PageInks _inks;
    readonly ImmutableArray<Finding> _notes;
    readonly ImmutableArray<Finding> _faults;

    /// <summary>Which build of the rooms that print this is: another one may print the same otherwise.</summary>
    public static string Build { get; } =
        string.Join(' ', typeof(PaperPrinter).Module.ModuleVersionId, typeof(PdfDocument).Module.ModuleVersionId);

    PaperPrinter(Books books, ImmutableArray<Finding> findings, ImmutableArray<Waived> waived, PrintOptions options)
    {
        (_books, _findings, _waived, _options) = (books, findings, waived, options);
        var production = books.Shoot.Production;
        var language = PaperLanguage.For(production, options.Templates);
        _notes = language.Findings;
        var words = language.Words;
        _format = new PaperFormat(production, words);
        var style = options.Templates.Find("style.css");
        _style = style?.Text ?? "";
        var faults = style is null ? [] : StyleSheetCheck.Faults(style).Select(PaperFaults.Template).ToList();
        var school = SchoolMark.Draw(production.School, words, faults);
        (_inks, var strange) = PaperInks.Choose(style, production.School);
        faults.AddRange(strange.Select(PaperFaults.Template));
        _style += SchoolStyle.Write(production.School);
        _head = new PaperHead(
            words.ForTemplates,
            production.Title.Value,
            production.Code.Value,
            production.Invented?.Value ?? "",
            _format.Date(DateOnly.FromDateTime(options.Made.DateTime)),
            language.Language,
            [.. findings.Where(f => f.Level == Level.Error).Select(f => $"{f.Place}: {f.Message}")]
        )
        {
            Credits = _format.Credits,
            School = school.Length == 0 ? null : new Markup(school),
        };
        _faults = [.. faults];
    }

    /// <summary>All the papers, by name.</summary>
    public static PrintedPapers Print(Books books, ImmutableArray<Finding> findings, ImmutableArray<Waived> waived, PrintOptions options)
    {
        try
        {
            return new PaperPrinter(books, findings, waived, options).Print();
        }
        catch (MissingWordException missing)
        {
            return new PrintedPapers([], [PaperFaults.MissingWord(missing.Key, books.Production.Language)]);
        }
        catch (UnfitWordException unfit)
        {
            return new PrintedPapers([], [PaperFaults.UnfitWord(unfit.Key, unfit.Description, books.Production.Language)]);
        }
    }

    PrintedPapers Print()
    {
        var source = new LedgerSource(_books, _findings, _waived, DateOnly.FromDateTime(_options.Made.DateTime));
        var papers = new PaperSource(_books, _findings, _waived, _options.Rules, _options.NotLookedAt, _head, _format)
        {
            Returned = _options.Returned,
        };
        var jobs = PaperList.All.SelectMany(p => p.Jobs(papers)).ToList();
        var links = PaperLinks.To(jobs);
        jobs.RemoveAll(job => !IsAsked(job.Name));
        var printed = new PrintedPaper[jobs.Count];
        var data = new ConcurrentBag<PaperFile>();
        InTurn(
            Ordered([
                .. Data(PaperList.Workbook, "footage.xlsx", () => FootageWorkbook.Make(source, _format.Words)),
                .. Enumerable.Range(0, jobs.Count).Select(i => (jobs[i].Name, (Action)(() => printed[i] = Staged(Print(jobs[i], links))))),
                .. Data(PaperList.Ledger, "ledger.json", () => LedgerWriter.Bytes(source)),
                .. Data(PaperList.Takes, "takes.csv", () => Encoding.UTF8.GetBytes(TakesCsv.Write(source, _format.Words))),
            ])
        );
        (string Paper, PageWarning Warning)[] warnings = [.. printed.SelectMany(p => p.Warnings)];
        var files = printed.SelectMany(p => p.Files).Concat(data).OrderBy(f => f.Name, StringComparer.Ordinal);
        return new PrintedPapers(
            [.. files],
            [
                .. _notes,
                .. _faults,
                .. PaperList.All.SelectMany(p => p.Faults(papers)),
                .. printed.SelectMany(p => p.Faults),
                .. LetterFaults.Find(_books.Shoot.Production, [.. warnings]),
                .. LabelFaults.Find(_books.Shoot.Production, [.. warnings]),
            ]
        );

        IEnumerable<(string, Action)> Data(string paper, string file, Func<byte[]> make) =>
            IsAsked(paper) ? [(paper, () => data.Add(Staged(new PaperFile(file, Bytes(make())))))] : [];
    }

    PrintedPaper Staged(PrintedPaper paper) => paper with { Files = [.. paper.Files.Select(Staged)] };

    PaperFile Staged(PaperFile file) => _options.Staging?.Stage(file) ?? file;

    bool IsAsked(string name) => PaperNames.IsAmong(_options.Only, name);

    // The workbook takes longest and the summary next, so that they go first, beside each other. A long shoot's summary is whole in
    // memory as the workbook is, so there it goes last.
    (string Name, Action Make)[] Ordered((string Name, Action Make)[] work)
    {
        var isLong = LongShoot.Is(_books.Shoot);
        return
        [
            .. work.OrderBy(w =>
                w.Name == PaperList.Workbook ? 0
                : w.Name != WrapSummaryPaper.Name ? 2
                : isLong ? 3
                : 1
            ),
        ];
    }

    // As many at a time as there are cores, each taking the next.
    static void InTurn((string Name, Action Make)[] work)
    {
        var next = -1;
        try
        {
            Parallel.For(0, Math.Min(Environment.ProcessorCount, work.Length), _ =>
            {
                for (var i = Interlocked.Increment(ref next); i < work.Length; i = Interlocked.Increment(ref next))
                {
                    Make(work[i].Name, work[i].Make);
                }
            });
        }
        catch (AggregateException heap)
        {
            // A parallel loop throws all that broke at once; the first paper of it says enough.
            ExceptionDispatchInfo.Throw(heap.Flatten().InnerExceptions[0]);
        }
    }

    static void Make(string paper, Action make)
    {
        try
        {
            make();
        }
        catch (Exception broken) when (broken is not (MissingWordException or UnfitWordException))
        {
            throw new PaperException(paper, broken);
        }
    }

    PrintedPaper Print(PaperJob job, PaperLinks links)
    {
        if (job.Program is { } program)
        {
            return Print(job, program, links);
        }

        GiveBack(job);
        var filled = TemplateEngine.Fill(_options.Templates, job.Template, job.Facts(links));
        var title = _head.Production + " – " + job.Title;
        var setup = Setup(job);
        return _options.Before is { } before
            ? before.Of(job.Name, PrintedBefore.KeyOf(filled.Text, title, _style, setup, _options.Made), () =>
                Set(job, filled, title, setup)
            )
            : Set(job, filled, title, setup);
    }

    PrintedPaper Set(PaperJob job, FilledTemplate filled, string title, PageSetup setup)
    {
        var result = filled.Read();
        if (result.Document is not { } document)
        {
            return new PrintedPaper([], [.. result.Faults.Select(PaperFaults.Template)]);
        }

        if (!job.Printed)
        {
            return new PrintedPaper([Page()], []);
        }

        GiveBack(job);
        var pdf = PdfRenderer.Render(document, setup, new PdfMeta(title, _head.Production, _head.Language, _options.Made));
        GiveBack(job);
        return new PrintedPaper(
            [.. job.HasPage ? [Page()] : (PaperFile[])[], new PaperFile(job.Name + ".pdf", Bytes(pdf.Bytes))],
            [.. pdf.Warnings.Where(w => w.Kind == PageWarningKind.Overflow).Select(w => PaperFaults.Overflow(job.Name + ".pdf", w))]
        )
        {
            Warnings = [.. pdf.Warnings.Where(w => w.Kind != PageWarningKind.Overflow).Select(w => (job.Name + ".pdf", w))],
        };

        PaperFile Page() => new(job.Name + ".html", Bytes(WebPage.Write(document, title, _head.Language, _style, setup)));
    }

    // Before it is filled, before its tree is set as pages, and before the tree is written as one.
    void GiveBack(PaperJob job)
    {
        if (job.Name == WrapSummaryPaper.Name)
        {
            LongShoot.GiveBack(_books.Shoot);
        }
    }

    // The look and the words may be a department's own; the script is always ours, as it is a program.
    PrintedPaper Print(PaperJob job, ScreenProgram program, PaperLinks links)
    {
        var result = TemplateEngine.RenderScreen(_options.Templates, job.Template, job.Facts(links));
        var style = _options.Templates.Find(program.Name + ".css");
        var script = new HouseTemplates().Find(program.Name + ".js");
        TemplateFault[] faults = [.. result.Faults, .. style is null ? [] : StyleSheetCheck.Faults(style)];
        if (result.Document is not { } document || faults.Length > 0)
        {
            return new PrintedPaper([], [.. faults.Select(PaperFaults.Template)]);
        }

        var title = _head.Production + " – " + job.Title;
        var page = ScreenPage.Write(document, title, _head.Language, style?.Text ?? "", script?.Text ?? "", program.Data());
        return new PrintedPaper([new PaperFile(job.Name + ".html", Bytes(page))], []);
    }

    PageSetup Setup(PaperJob job) =>
        new(job.Paper ?? (_books.Shoot.Production.Paper == PaperSize.A4 ? Paper.A4 : Paper.Letter))
        {
            HeadLeft = _head.Production + " · " + _head.Code,
            HeadRight = job.Title,
            FootLeft = _format.Words.Fill("foot", ("made", _head.Made)),
            Inks = _inks,
            Stamp = _head.Draft ? _format.Words["draft"] : "",
            Words = new PageLabels(_format.Words["page-of"], _format.Words["done"], _format.Words["not-done"]),
        };

    static ImmutableArray<byte> Bytes(string text) => Bytes(Encoding.UTF8.GetBytes(text));

    // Nobody else has the array, so it needs no copy.
    static ImmutableArray<byte> Bytes(byte[] bytes) => ImmutableCollectionsMarshal.AsImmutableArray(bytes);
}
