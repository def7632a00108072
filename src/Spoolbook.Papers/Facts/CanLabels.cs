using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Pictures;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Cans;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Facts;

/// <summary>The facts of the sheet of can labels.</summary>
public sealed record CanLabelsFacts(PaperHead Head) : PaperFacts(Head)
{
    public required LabelGrid Sheet { get; init; }

    public required ImmutableArray<CanLabel> Labels { get; init; }
}

/// <summary>One can's label.</summary>
/// <param name="Roll">What stands largest on it.</param>
/// <param name="ShortName">Whether the roll's name is short enough for the largest type.</param>
/// <param name="LongName">Whether it is too long even for large type.</param>
/// <param name="ShortEnd">Whether the can holds raw stock, cut off a roll, and nothing exposed.</param>
/// <param name="Held">Whether the can does not go to the lab.</param>
/// <param name="Code">Production, roll and check character, as the QR code has it.</param>
public sealed record CanLabel(string Roll, bool ShortName, bool LongName, bool ShortEnd, bool Held, string Code, Markup Qr)
{
    public string Process { get; init; } = "";

    public string Push { get; init; } = "";

    public required StockFacts Stock { get; init; }

    public required string Rated { get; init; }

    /// <summary>How much film, of what is in the can: exposed, or left over.</summary>
    public required string Film { get; init; }

    public required string Body { get; init; }

    public required string Date { get; init; }

    /// <summary>Where it goes back, on one line.</summary>
    public required string ReturnTo { get; init; }
}

/// <summary>Gathers the facts of can labels.</summary>
internal static class CanLabelSheet
{
    // In the largest type five letters stand beside the code; in the next some ten.
    const int ShortNameLength = 4, LongNameLength = 9;

    public static CanLabelsFacts Of(ShootBook book, StockBook stock, PaperHead head, Wording say)
    {
        var production = book.Production;
        var sheet = SheetOf(production);
        return new CanLabelsFacts(head)
        {
            Sheet = LabelGrid.Of(sheet, production.Paper, StartOf(production)),
            Labels =
            [
                .. book.Counted.Where(r => r.Roll.Unload is not null).Select(r => Exposed(r, book, say)),
                .. stock.ShortEnds.Where(e => e.OnHand.Frames > 0).Select(e => ShortEnd(e, production, say)),
            ],
        };
    }

    public static LabelSheet SheetOf(Production production) => production.Labels?.Sheet?.Value ?? LabelSheet.Cut;

    /// <summary>The label to begin with; the first one where the sheet does not have as many as were written.</summary>
    public static int StartOf(Production production) =>
        production.Labels?.Start?.Value is { } start && start <= LabelGrid.PerSheet(SheetOf(production)) ? start : 1;

    static CanLabel Exposed(RollBook roll, ShootBook book, Wording say)
    {
        var production = book.Production;
        var record = roll.Roll;
        var work = roll.LabWork;
        return Label(CanCode.Of(production, record), record.Name.Value, false, !book.Sent.Contains(roll), say) with
        {
            Process = work.Process ?? say.Words["not-stated"],
            Push = work.Push == 0 ? "" : say.Stops(work.Push),
            Stock = CameraReport.StockOf(roll, production.LotOf(record), say),
            Rated = CameraReport.RatedOf(record, production.LotOf(record)),
            Film = say.Words.Fill("label-exposed", ("exposed", say.LengthWithUnit(roll.Tally.Exposed)), ("loaded", say.LengthWithUnit(roll.Strip.Loaded))),
            Body = Wording.OrDash(record.Body),
            Date = say.Date(DateOnly.FromDateTime(record.Unload!.On.Value)),
            ReturnTo = Address(production),
        };
    }

    static CanLabel ShortEnd(StockShortEnd end, Production production, Wording say)
    {
        var roll = end.Parent.Name.Value;
        return Label(new CanCode(production.Code.Value, roll + "-SE"), roll, true, true, say) with
        {
            Process = end.Lot.Process.Value,
            Stock = new StockFacts(end.Lot.Stock.Value, end.Lot.Name.Value, say.Words.Fill("short-end-of", ("roll", roll)), Wording.OrDash(end.Lot.Emulsion), Wording.Number(end.Lot.Index.Value), say.Balance(end.Lot.Balance), say.LengthWithUnit(end.OnHand), ""),
            Rated = Wording.Number(end.Lot.Index.Value),
            Film = say.LengthWithUnit(end.OnHand),
            Date = say.Date(end.Made),
        };
    }

    static CanLabel Label(CanCode code, string roll, bool shortEnd, bool held, Wording say) => new(
        roll,
        new StringInfo(roll).LengthInTextElements <= ShortNameLength,
        new StringInfo(roll).LengthInTextElements > LongNameLength,
        shortEnd,
        held,
        code.ToString(),
        new Markup(QrPicture.Draw(code.ToString(), say.Words["qr-code"])))
    {
        Stock = new StockFacts("", "", "", "", "", "", "", ""),
        Rated = "",
        Film = "",
        Body = "",
        Date = "",
        ReturnTo = "",
    };

    static string Address(Production production) => string.Join(", ", (production.Lab?.ReturnTo ?? []).Select(l => l.Value));
}
