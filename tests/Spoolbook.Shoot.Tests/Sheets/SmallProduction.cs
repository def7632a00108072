using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Tests.Sheets;

/// <summary>A small production to put sheets in: one body with a variable shutter, one filter, one lot.</summary>
static class SmallProduction
{
    static readonly Place Nowhere = new("production.yaml", 1, 1, 1);

    public static Production Of(params IEnumerable<Sheet> sheets) =>
        new(Nowhere)
        {
            Title = Sheet.Written("The Ferry Light"),
            Code = Sheet.Written("FERRY"),
            Bodies = [Body("B1"), Body("B2")],
            Filters = [new Filter(Nowhere, Sheet.Written("85"), null, Sheet.Written(2 / 3.0), null, new Returned(1, null, null))],
            Lots = [Lot],
            Rolls = [.. sheets.Select(s => s.Roll)],
        };

    public static StockLot Lot { get; } =
        new(Nowhere)
        {
            Name = Sheet.Written("N250-A"),
            Stock = Sheet.Written("Colour negative 250 D"),
            Index = Sheet.Written(250),
            Process = Sheet.Written("ecn-2"),
            Length = Sheet.Written(Sheet.At(100)),
            Units = Sheet.Written(4),
        };

    static Body Body(string name) =>
        new(Nowhere)
        {
            Name = Sheet.Written(name),
            ShutterMarks = [Mark("open", 1, 1, 0), Mark("quarter", 3, 4, 0.5), Mark("half", 1, 2, 1), Mark("closed", 0, 1, null)],
        };

    static ShutterMark Mark(string name, int open, int of, double? stops) =>
        new(Nowhere, Sheet.Written(name), Sheet.Written(new Ratio(open, of)), Sheet.Perhaps(stops));
}
