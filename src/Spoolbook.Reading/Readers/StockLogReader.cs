using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Trees;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

static class StockLogReader
{
    /// <summary>The entry in an item; null, with a finding, where there is none.</summary>
    public static StockEntry? Read(Node item, ReadingContext context)
    {
        if (
            EntryKinds.KindOf(item, StockLogKeys.Kinds, "- sent-away: {lot: N250-A, units: [4], on: 2026-10-03}", context.Findings)
                is not
                ({ } kind, { } written)
            || MapReader.Under(written, kind.Table, context) is not { } map
        )
        {
            return null;
        }

        var entry = map.Value(StockEntryKeys.On) is { } on ? Entry(kind, on, map) : map.LetGo<StockEntry>();
        var isSplit = kind == StockLogKeys.Split;
        var lot = isSplit ? null : map.Value(StockEntryKeys.Lot);
        var shortEndOf = map.Value(StockEntryKeys.ShortEndOf);
        if (lot is null && shortEndOf is null)
        {
            return null;
        }

        // Cold and X-rays can reach a whole lot; a loss or a transfer is about cans, and those have numbers.
        if (
            lot is not null
            && !map.Has(StockEntryKeys.Units)
            && kind != StockLogKeys.OutOfCold
            && kind != StockLogKeys.IntoCold
            && kind != StockLogKeys.XRayed
        )
        {
            context.Findings.Add(
                SheetChecks.MissingKey,
                Sentence.Of("sheet/missing-key.message.units", ("lot", Quote.Short(lot.Value))),
                map.Head,
                Sentence.Of("sheet/missing-key.help.units")
            );
            return null;
        }

        return entry is null
            ? null
            : entry with
            {
                Lot = lot,
                Units = isSplit ? [] : map.Values(StockEntryKeys.Units),
                ShortEndOf = shortEndOf,
                Piece = isSplit ? null : map.Value(StockEntryKeys.Piece),
                Note = map.Value(StockEntryKeys.Note),
            };
    }

    static StockEntry Entry(EntryKind kind, Located<StockTime> on, MapReader map) =>
        kind switch
        {
            _ when kind == StockLogKeys.Came => new StockCame(map.Head)
            {
                On = on,
                From = map.Value(StockEntryKeys.From),
                Price = map.Value(StockEntryKeys.Paid),
            },
            _ when kind == StockLogKeys.SentAway => new StockSentAway(map.Head)
            {
                On = on,
                To = map.Value(StockEntryKeys.To),
                Price = map.Value(StockEntryKeys.Got),
            },
            _ when kind == StockLogKeys.Lost => new StockLost(map.Head) { On = on },
            _ when kind == StockLogKeys.Damaged => new StockDamaged(map.Head) { On = on },
            _ when kind == StockLogKeys.Recanned => new StockRecanned(map.Head) { On = on, Off = map.Value(StockEntryKeys.Off) },
            _ when kind == StockLogKeys.Split => new StockSplit(map.Head) { On = on, Into = map.Values(StockEntryKeys.Into) },
            _ when kind == StockLogKeys.OutOfCold => new StockOutOfCold(map.Head) { On = on, From = map.Value(StockEntryKeys.Cold) },
            _ when kind == StockLogKeys.IntoCold => new StockIntoCold(map.Head) { On = on },
            _ => new StockXRayed(map.Head) { On = on, Passes = map.Value(StockEntryKeys.Passes) },
        };
}
