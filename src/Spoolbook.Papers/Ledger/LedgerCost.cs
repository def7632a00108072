using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Papers.Ledger;

/// <summary>The money.</summary>
static class LedgerCost
{
    public static void Write(LedgerJson ledger, CostBook cost, CostToEnd end) => ledger.Object("cost", () =>
        {
            ledger.Word("currency", cost.Currency);
            foreach (var stage in Enum.GetValues<CostStage>())
            {
                ledger.Money(Codes.Of(stage), cost.TotalAt(stage));
            }

            ledger.Money("order-before-tax", cost.OrderBeforeTax);
            ledger.Money("to-date", cost.ToDate);
            ledger.Money("total", cost.Total);
            ledger.Count("open-lines", cost.Open.Count());
            ledger.Object("to-the-end", () =>
            {
                ledger.Length("film", end.Film);
                ledger.Length("lacking", end.Lacking);
                ledger.Money("lab", end.Lab);
                ledger.Money("stock", end.Stock);
                ledger.Money("total", end.Total);
            });
            ledger.Objects("lines", cost.Lines, line =>
            {
                ledger.Word("stage", Codes.Of(line.Stage));
                ledger.Word("what", Codes.Of(line.Kind));
                ledger.Count("consignment", line.Consignment);
                ledger.Word("roll", line.Roll);
                ledger.Word("lot", line.Lot);
                ledger.Word("name", line.Name);
                ledger.Length("film", line.Film);
                ledger.Number("quantity", line.Quantity);
                ledger.Word("unit", Codes.Of(line.Unit));
                ledger.Money("rate", line.Rate);
                ledger.Money("minimum", line.Minimum);
                ledger.Json.WriteBoolean("at-minimum", line.AtMinimum);
                ledger.Money("amount", line.Amount);
                ledger.Word("open", line.Open is { } reason ? Codes.Of(reason) : null);
            });
        });
}
