using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Facts;

/// <summary>The stock of a roll, as on its can.</summary>
public sealed record StockFacts(
    string Name,
    string Lot,
    string Unit,
    string Emulsion,
    string Index,
    string Balance,
    string Loaded,
    string Expires
)
{
    /// <summary>Lot, unit and emulsion, where they are known.</summary>
    public string Source => string.Join(" · ", new[] { $"{Lot} / {Unit}", Emulsion }.Where(p => p != PaperFormat.Dash));

    /// <summary>The stock with its rows of perforations, where they are written: <c>Colour negative 250 D, 2R</c>.</summary>
    internal static string NameOf(StockLot lot) =>
        lot.Stock.Value + (lot.Perforation is { } rows ? $", {PaperFormat.Number(rows.Value)}R" : "");

    /// <summary>A short end by its name, as on its can; of a re-can, that it is one.</summary>
    internal static string NameOf(StockShortEnd end, PaperFormat format) =>
        end.IsRecan ? format.Words.Fill("re-can-of", ("name", end.Name)) : end.Name;

    /// <summary>What light it is for; of practice stock nobody asks, and colour stock without a balance is not black and white.</summary>
    internal static string BalanceOf(StockLot lot, PaperFormat format) =>
        lot.Practice?.Value == true || (lot.Balance == ColourBalance.None && ProcessKind.IsColour(lot.Process.Value))
            ? ""
            : format.Balance(lot.Balance);

    /// <param name="stock">Which piece of a short end it was loaded from.</param>
    internal static StockFacts Of(RollBook roll, StockLot? lot, StockBook stock, PaperFormat format) =>
        new(
            lot is null ? PaperFormat.Dash : NameOf(lot),
            lot?.Name.Value ?? PaperFormat.Dash,
            stock.ShortEndIn(roll.Roll) is { } piece ? piece.Name
                : roll.Roll.ShortEndOf is { } parent ? StockShortEnd.NameOf(parent.Value)
                : PaperFormat.OrDash(roll.Roll.Unit),
            PaperFormat.OrDash(lot?.Emulsion),
            lot is null ? PaperFormat.Dash : PaperFormat.Number(lot.Index.Value),
            lot is null ? PaperFormat.Dash : BalanceOf(lot, format),
            format.LengthWithUnit(roll.Strip.Loaded),
            lot?.Expires is { } expires ? format.Date(expires.Value) : PaperFormat.Dash
        );
}
