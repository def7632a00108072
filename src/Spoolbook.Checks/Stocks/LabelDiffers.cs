using System.Globalization;
using System.Text.RegularExpressions;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static partial class LabelDiffers
{
    public static readonly RecordCheck Check = new("stock/label-differs", Level.Warning, Look);

    // Beyond it, exposure/no-such-index says so.
    const int MostOnMeters = 3200;

    static IEnumerable<Finding> Look(Context context) =>
        from lot in context.Production.Lots
        let finding = OfIndex(lot) ?? OfBalance(lot) ?? OfProcess(lot)
        where finding is not null
        select finding with
        {
            Others = [new Related(lot.Stock.Place, Sentence.Of("stock/label-differs.other"))],
            Advice = Sentence.Of("stock/label-differs.help"),
        };

    // 250 D is rated 250: a name with a light has its index in that light.
    static Finding? OfIndex(StockLot lot) =>
        Named(lot) is { } name && name.Index != lot.Index.Value && lot.Index.Value <= MostOnMeters
            ? Check.At(
                lot.Index.Place,
                Sentence.Of(
                    "stock/label-differs.message.index",
                    ("lot", lot.Name.Value),
                    ("index", Context.Number(lot.Index.Value)),
                    ("named", Context.Number(name.Index))
                )
            )
            : null;

    static Finding? OfBalance(StockLot lot) =>
        Named(lot) is not { } name || name.Balance == lot.Balance
            ? null
            : Check.At(
                lot.Stock.Place,
                Sentence.Of(
                    name.Balance == ColourBalance.Daylight
                        ? "stock/label-differs.message.daylight"
                        : "stock/label-differs.message.tungsten",
                    ("lot", lot.Name.Value),
                    ("stock", lot.Stock.Value)
                )
            );

    static Finding? OfProcess(StockLot lot)
    {
        var process = lot.Process.Value;
        var isColour = ProcessKind.IsColour(process);
        var isGrey = process.StartsWith("bw", StringComparison.OrdinalIgnoreCase);
        return (isColour && lot.Balance == ColourBalance.None) || (isGrey && lot.Balance != ColourBalance.None)
            ? Check.At(
                lot.Process.Place,
                Sentence.Of(
                    isColour ? "stock/label-differs.message.colour" : "stock/label-differs.message.grey",
                    ("lot", lot.Name.Value),
                    ("process", process.ToUpperInvariant())
                )
            )
            : null;
    }

    static (int Index, ColourBalance Balance)? Named(StockLot lot) =>
        Light().Match(lot.Stock.Value) is { Success: true } match
            ? (
                int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture),
                match.Groups[2].Value == "D" ? ColourBalance.Daylight : ColourBalance.Tungsten
            )
            : null;

    [GeneratedRegex(@"\b(\d{2,4}) ?([DT])\b", RegexOptions.CultureInvariant)]
    private static partial Regex Light();
}
