using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Ledger;

/// <summary>The days, the parts of the shoot, and the stock.</summary>
sealed class LedgerStock(LedgerJson ledger, LedgerSource source)
{
    public void Write()
    {
        var stock = source.Stock;
        ledger.Objects("days", stock.Days, Day);
        ledger.Objects("scenes", stock.Scenes, s => Part("scene", s));
        ledger.Objects("lots", stock.ByLot, l => Part("lot", l));
        ledger.Objects("bodies", stock.Bodies, b => Part("body", b));
        ledger.Object("stock", () =>
        {
            ledger.Length("on-hand", stock.OnHand);
            ledger.Length("left", stock.Left);
            ledger.Objects("lots", stock.Lots, Lot);
            ledger.Objects("short-ends", stock.ShortEnds, ShortEnd);
            ledger.Objects("log", stock.Moves, Move);
            ledger.Objects("x-rayed-units", stock.XRayedUnits.OrderBy(u => u.Key.Lot, StringComparer.Ordinal).ThenBy(u => u.Key.Unit), u =>
            {
                ledger.Word("lot", u.Key.Lot);
                ledger.Count("unit", u.Key.Unit);
                ledger.Count("x-rayed", u.Value);
            });
            ledger.Objects("bridge-in", source.Books.Bridge.Origins, o =>
            {
                ledger.Word("how", Codes.Of(o.What));
                ledger.Length("film", o.Film);
            });
            ledger.Objects("bridge-out", source.Books.Bridge.Places, p =>
            {
                ledger.Word("where", Codes.Of(p.What));
                ledger.Length("film", p.Film);
            });
            ledger.Words("unplaced", stock.Unplaced.Select(r => r.Name.Value));
        });
    }

    void Day(StockDay day)
    {
        ledger.Count("day", day.Day?.Number.Value);
        ledger.Date("on", day.On);
        ledger.Count("rolls-loaded", day.RollsLoaded);
        ledger.Length("loaded", day.Loaded);
        ledger.Use("use", day.Use);
        ledger.Tally("to-date", day.ToDate);
        ledger.Length("short-ends-made", day.ShortEndsMade);
        ledger.Length("came", day.Came);
        ledger.Length("went", day.Went);
        ledger.Length("on-hand", day.OnHand);
        ledger.Length("in-camera", day.InCamera);
        ledger.Length("left", day.Left);
    }

    void Part(string key, UseOfPart part)
    {
        ledger.Word(key, part.Name);
        ledger.Use("use", part.Use);
    }

    void Lot(StockLotBook lot)
    {
        ledger.Word("lot", lot.Lot.Name.Value);
        ledger.Word("stock", lot.Lot.Stock.Value);
        ledger.Word("emulsion", lot.Lot.Emulsion?.Value);
        ledger.Count("index", lot.Lot.Index.Value);
        ledger.Word("balance", Codes.Of(lot.Lot.Balance));
        ledger.Word("process", lot.Lot.Process.Value);
        ledger.Date("expires", lot.Lot.Expires?.Value);
        ledger.Json.WriteBoolean("practice", lot.IsPractice);
        ledger.Object("units", () =>
        {
            ledger.Count("received", lot.UnitsReceived);
            ledger.Count("came", lot.UnitsCame);
            ledger.Count("sent-away", lot.UnitsSentAway);
            ledger.Count("lost", lot.UnitsLost);
            ledger.Count("loaded", lot.UnitsLoaded);
            ledger.Count("practised", lot.UnitsPractised);
            ledger.Count("unopened", lot.UnitsUnopened);
        });
        ledger.Length("unit-length", lot.Lot.Length.Value);
        ledger.Length("received", lot.Received);
        ledger.Length("came", lot.Came);
        ledger.Length("remeasured", lot.Remeasured);
        ledger.Length("unopened", lot.Unopened);
        ledger.Length("loaded", lot.Loaded);
        ledger.Length("exposed", lot.Exposed);
        ledger.Count("short-end-cans", lot.ShortEndCans);
        ledger.Length("short-ends", lot.ShortEnds);
        ledger.Length("in-camera", lot.InCamera);
        ledger.Length("practised", lot.Practice);
        ledger.Length("unread", lot.Unread);
        ledger.Length("sent-away", lot.SentAway);
        ledger.Length("lost", lot.Lost);
        ledger.Length("on-hand", lot.OnHand);
        ledger.Length("left", lot.Left);
    }

    void Move(StockMove move)
    {
        ledger.Date("on", move.On);
        ledger.Word("what", move.Entry.Word);
        ledger.Word("lot", move.Lot.Name.Value);
        ledger.Count("unit", move.Unit);
        ledger.Word("short-end-of", move.ShortEndOf?.Name.Value);
        ledger.Count("piece", move.Piece);
        ledger.Word("with", move.With);
        ledger.Length("film", move.Film);
        ledger.Length("change", move.Change);
        ledger.Json.WriteBoolean("counts", move.Counts);
        ledger.Word("fault", move.Fault is { } fault ? Codes.Of(fault) : null);
        ledger.Word("note", move.Entry.Note?.Value);
    }

    void ShortEnd(StockShortEnd end)
    {
        ledger.Word("from-roll", end.Parent.Name.Value);
        ledger.Count("piece", end.Piece);
        ledger.Word("lot", end.Lot.Name.Value);
        ledger.Length("length", end.Length);
        ledger.Date("made", end.Made);
        ledger.Word("used-as", end.UsedBy?.Name.Value);
        ledger.Length("on-hand", end.OnHand);
        ledger.Count("x-rayed", end.XRayed);
    }
}
