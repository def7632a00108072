using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Workbook;

/// <summary>The lines of the cost. A line without a rate says that it is open, and is in no sum.</summary>
static class CostSheet
{
    const string Priced = "IF([@Rate]=\"\",\"open\",ROUND(IF([@Minimum]=\"\",[@Quantity]*[@Rate],MAX([@Quantity]*[@Rate],[@Minimum])),2))";

    // How many lines are above this one.
    const string Above = "ROWS(INDEX(Cost[Stage],1):[@Stage])-1";

    // Tax is on the priced lines above it of the same stage and consignment. Only on those above: the tax line's own
    // amount depends on the sum.
    const string Taxed =
        "SUMPRODUCT((INDEX(Cost[Stage],1):INDEX(Cost[Stage],"
        + Above
        + ")=[@Stage])"
        + "*(INDEX(Cost[Consignment],1):INDEX(Cost[Consignment],"
        + Above
        + ")=[@Consignment]),INDEX(Cost[Amount],1):INDEX(Cost[Amount],"
        + Above
        + "))";

    // Why a line is open.
    const string NoRate = "no rate written";
    const string NoProcess = "no process known";
    const string OutOfRange = "rate out of all range";

    const string Open = "open";
    const string AtMinimum = "minimum";

    public static TableSheet<CostLine> Of(LedgerSource source, WorkbookTerms say) =>
        new(
            "Cost",
            say["about.cost"],
            [
                new("Stage", CellFormat.Words, 12, l => Codes.Of(l.Stage))
                {
                    Allowed = Allowed.Only(Enum.GetValues<CostStage>().Select(Codes.Of)),
                },
                new("What", CellFormat.Words, 11, l => Codes.Of(l.Kind))
                {
                    Allowed = Allowed.Only(Enum.GetValues<CostKind>().Select(Codes.Of)),
                },
                new("Consignment", CellFormat.Count, 13, l => (double?)l.Consignment),
                new("Roll", CellFormat.Words, 10, l => l.Roll),
                new("Lot", CellFormat.Words, 12, l => l.Lot),
                new("Name", CellFormat.Words, 16, l =>
                    l.Kind == CostKind.Process && l.Name is { } process
                        ? say.FormatFor(source.Shoot.Production).ShortProcess(process)
                        : l.Name
                ),
                new("Quantity", CellFormat.Plain, 11, l => Quantity(l, source.Cost)),
                new("Unit", CellFormat.Words, 9, l => Codes.Of(l.Unit))
                {
                    Allowed = Allowed.Only(Enum.GetValues<CostUnit>().Select(Codes.Of)),
                },
                new("Rate", CellFormat.Rate, 10, l => Shown(l) ? l.Rate : null),
                new("Minimum", CellFormat.Money, 10, l => l.Minimum),
                new("Amount", CellFormat.Money, 14, Amount) { Summed = true, Codes = [Open] },
                new("Remark", CellFormat.Words, 20, Remark) { Codes = [NoRate, NoProcess, OutOfRange, AtMinimum] },
            ],
            source.Cost.Lines
        )
        {
            Finish = MarkOpen,
        };

    // A rate beyond the range would make the spreadsheet show an amount that we refuse.
    static bool Shown(CostLine line) => line.Open is not OpenReason.OutOfRange;

    static CellValue Amount(CostLine line) =>
        line.Amount is { } amount ? CellValue.Calculated(Priced, (double)amount) : CellValue.CalculatedWords(Priced, Open);

    static CellValue Quantity(CostLine line, CostBook cost) =>
        line switch
        {
            { Kind: CostKind.Stock } => CellValue.Calculated("SUMPRODUCT(EXACT(Stock[Lot],[@Lot])*Stock[Units])", line.Quantity.ToDouble()),
            { Kind: CostKind.Tax } when !ReferenceEquals(line, cost.Lines[0]) => CellValue.Calculated(Taxed, line.Quantity.ToDouble()),
            { Unit: CostUnit.Hour } => CellValue.Calculated(
                "SUMPRODUCT(EXACT(Film[Roll],[@Roll])*(Film[Account]<>\"SE\")*(Film[Waste by]<>\"end\")*Film[Frames])/ProjectedAt/3600",
                line.Quantity.ToDouble()
            ),
            { Unit: CostUnit.Metre, Roll: not null } => CellValue.Calculated(
                "SUMPRODUCT(EXACT(Film[Roll],[@Roll])*(Film[Account]<>\"SE\")*(Film[Waste by]<>\"end\")*Film[Frames])/FramesPerFoot*0.3048",
                line.Quantity.ToDouble()
            ),
            { Film: not null, Roll: not null } => CellValue.Calculated(
                "SUMPRODUCT(EXACT(Film[Roll],[@Roll])*(Film[Account]<>\"SE\")*(Film[Waste by]<>\"end\")*Film[Frames])/FramesPerFoot",
                line.Quantity.ToDouble()
            ),
            _ => (Film.Ratio?)line.Quantity,
        };

    static CellValue Remark(CostLine line) =>
        line.Open switch
        {
            OpenReason.NoRate => NoRate,
            OpenReason.NoProcess => NoProcess,
            OpenReason.OutOfRange => OutOfRange,
            _ => CellValue.CalculatedWords(
                "IF(AND([@Minimum]<>\"\",[@Quantity]*[@Rate]<[@Minimum]),\"minimum\",\"\")",
                line.AtMinimum ? AtMinimum : ""
            ),
        };

    static void MarkOpen(WrittenTable table) =>
        table
            .Cells("Amount")
            .AddConditionalFormat()
            .WhenEquals(table.Words.Code(table.Table.Name, Open))
            .Fill.SetBackgroundColor(SheetWriter.Alarm);
}
