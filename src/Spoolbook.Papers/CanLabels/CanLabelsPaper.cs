using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Faults;
using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Cans;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.CanLabels;

/// <summary>A label for each can, on one of the common sheets or on paper to cut.</summary>
internal sealed class CanLabelsPaper : IPaper
{
    public IEnumerable<PaperJob> Jobs(PaperSource source)
    {
        yield return new PaperJob("can-labels", "can-labels.html", source.Words["can-labels"], _ => Of(source))
        {
            Paper = LabelGrid.PaperOf(SheetOf(source.Production), source.Production.Paper),
        };
    }

    /// <summary>Flags a first label that the sheet does not have.</summary>
    public IEnumerable<Finding> Faults(PaperSource source)
    {
        var most = LabelGrid.PerSheet(SheetOf(source.Production));
        if (source.Production.Labels?.Start is { } start && start.Value > most)
        {
            yield return PaperFaults.NoSuchLabel(start, most);
        }
    }

    static CanLabelsFacts Of(PaperSource source)
    {
        var (book, production, format) = (source.Shoot, source.Production, source.Format);
        var sheet = SheetOf(production);
        return new CanLabelsFacts(source.Head)
        {
            Sheet = LabelGrid.Of(sheet, production.Paper, StartOf(production)),
            Gauge = production.Gauge.Name,
            Labels =
            [
                .. book.ExposedCans.Select(r => Exposed(r, source.Books, format)),
                .. book.Rolls.Where(r => r.Roll is { IsPractice: true, Unload: not null }).Select(r => Practice(r, source.Books, format)),
                .. source.Books.Stock.ShortEnds.Where(e => e.OnHand.Frames > 0).Select(e => ShortEnd(e, production, format)),
            ],
        };
    }

    static LabelSheet SheetOf(Production production) => production.Labels?.Sheet?.Value ?? LabelSheet.Cut;

    /// <summary>The label to start with; the first one where the sheet has fewer than that.</summary>
    static int StartOf(Production production) =>
        production.Labels?.Start?.Value is { } start && start <= LabelGrid.PerSheet(SheetOf(production)) ? start : 1;

    /// <summary>The label of a roll's can.</summary>
    internal static CanLabel Exposed(RollBook roll, Books books, PaperFormat format)
    {
        var (book, production) = (books.Shoot, books.Production);
        var record = roll.Roll;
        var work = roll.LabWork;
        return Label(CanCode.Of(production, record), production, record.Name.Value, false, !book.Sent.Contains(roll), format) with
        {
            Process = format.ShortProcess(work.Process),
            IsReversal = work.Process is { } process && ProcessKind.IsReversal(process),
            Push = work.Push == 0 ? "" : format.Stops(work.Push),
            Stock = StockFacts.Of(roll, production.LotOf(record), books.Stock, format),
            Rated = RollPhrases.Rated(record, production.LotOf(record)),
            Film = RollPhrases.InCan(roll, books, format),
            CanOf = CanOf(roll, books.Cost, format),
            Lab = book.Sent.Contains(roll) ? production.Lab?.Name?.Value ?? "" : "",
            Warnings = [.. RollPhrases.Warnings(roll, books, format)],
            Outside = RollPhrases.IsHeadOut(roll) ? "" : format.Words["label-tail-out"],
            CutFrom =
                roll.Tally.InCan < roll.Strip.Loaded
                    ? format.Words.Fill("label-cut", ("loaded", format.LengthWithUnit(roll.Strip.Loaded)))
                    : "",
            Body = PaperFormat.OrDash(record.Body),
            Date = format.Words["taken-out"] + " " + format.Date(DateOnly.FromDateTime(record.Unload!.On.Value)),
            ReturnTo = Address(production),
        };
    }

    // In a box for the lab it would be processed, and paid for, like any other.
    static CanLabel Practice(RollBook roll, Books books, PaperFormat format) =>
        Exposed(roll, books, format) with
        {
            IsPractice = true,
            Held = false,
            Process = "",
            Push = "",
            Warnings = [format.Words["label-practice-warning"]],
            Outside = "",
        };

    static CanLabel ShortEnd(StockShortEnd end, Production production, PaperFormat format)
    {
        return Label(
            new CanCode(production.Code.Value, end.Name),
            production,
            end.IsRecan ? end.Parent.Name.Value : end.Name,
            true,
            true,
            format
        ) with
        {
            Process = format.ShortProcess(end.Lot.Process.Value),
            IsReversal = ProcessKind.IsReversal(end.Lot.Process.Value),
            Stock = new StockFacts(
                StockFacts.NameOf(end.Lot),
                end.Lot.Name.Value,
                StockFacts.NameOf(end, format),
                PaperFormat.OrDash(end.Lot.Emulsion),
                PaperFormat.Number(end.Lot.Index.Value),
                StockFacts.BalanceOf(end.Lot, format),
                format.LengthWithUnit(end.OnHand),
                ""
            ),
            Rated = PaperFormat.Number(end.Lot.Index.Value),
            Film = format.LengthWithUnit(end.OnHand),
            Warnings = format.XRayed(end.XRayed) is { Length: > 0 } passes ? [passes] : [],
            // The day on the can of the exposed film that it was cut from, so that the two are found together.
            Date = format.Date(end is { IsWhole: true, Parent.Unload: { } unload } ? DateOnly.FromDateTime(unload.On.Value) : end.Made),
        };
    }

    static string CanOf(RollBook roll, CostBook cost, PaperFormat format) =>
        cost.SendingOf(roll) is { } sending
            ? format.Words.Fill(
                "label-can-of",
                ("n", PaperFormat.Number(sending.NumberOf(roll))),
                ("all", PaperFormat.Number(sending.Rolls.Length))
            )
            : "";

    static CanLabel Label(CanCode code, Production production, string roll, bool shortEnd, bool held, PaperFormat format) =>
        new CanLabel(
            roll,
            false,
            false,
            shortEnd,
            held,
            code.ToString(),
            new Markup(QrPicture.Draw(code.ToString(), format.Words["qr-code"]))
        )
        {
            Production = production.Title.Value,
            Gauge = production.Gauge.Name,
            Stock = new StockFacts("", "", "", "", "", "", "", ""),
            Rated = "",
            Film = "",
            Body = "",
            Date = "",
            ReturnTo = "",
        }.Named(roll);

    static string Address(Production production) => string.Join(", ", (production.Lab?.ReturnTo ?? []).Select(l => l.Value));
}
