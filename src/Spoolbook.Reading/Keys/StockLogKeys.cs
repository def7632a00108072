using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

/// <summary>The kinds of entry in the stock log.</summary>
static class StockLogKeys
{
    public static readonly EntryKind Came = new(
        "came",
        Table(Sentence.Of("common.owner.stock-came"), [StockEntryKeys.From, StockEntryKeys.Paid]),
        EntryShort.None,
        "Units that came after the first delivery, or came back."
    );
    public static readonly EntryKind SentAway = new(
        "sent-away",
        Table(Sentence.Of("common.owner.stock-sent-away"), [StockEntryKeys.To, StockEntryKeys.Got]),
        EntryShort.None,
        "Given to another production or back to a store."
    );
    public static readonly EntryKind Lost = new(
        "lost",
        Table(Sentence.Of("common.owner.stock-lost"), []),
        EntryShort.None,
        "Nobody can find it."
    );
    public static readonly EntryKind Damaged = new(
        "damaged",
        Table(Sentence.Of("common.owner.stock-damaged"), []),
        EntryShort.None,
        "It cannot be used any more."
    );
    public static readonly EntryKind Recanned = new(
        "recanned",
        Table(Sentence.Of("common.owner.re-can"), [StockEntryKeys.Off]),
        EntryShort.None,
        "Opened or loaded, and re-canned unexposed."
    );
    public static readonly EntryKind Split = new(
        "split",
        new KeyTable(
            Sentence.Of("common.owner.stock-split"),
            [StockEntryKeys.On, StockEntryKeys.ShortEndOf with { Required = true }, StockEntryKeys.Into, StockEntryKeys.Note]
        ),
        EntryShort.None,
        "A short end was cut into pieces, each in a can of its own."
    );
    public static readonly EntryKind OutOfCold = new(
        "out-of-cold",
        Table(Sentence.Of("common.owner.stock-out-of-cold"), [StockEntryKeys.Cold]),
        EntryShort.None,
        "Taken out to warm up before it is opened."
    );
    public static readonly EntryKind IntoCold = new(
        "into-cold",
        Table(Sentence.Of("common.owner.stock-into-cold"), []),
        EntryShort.None,
        "Put into the fridge or the freezer, or back."
    );
    public static readonly EntryKind XRayed = new(
        "x-rayed",
        Table(Sentence.Of("common.owner.stock-x-rayed"), [StockEntryKeys.Passes]),
        EntryShort.None,
        "It went through an X-ray machine, exposed or not."
    );

    public static readonly ImmutableArray<EntryKind> Kinds = [Came, SentAway, Lost, Damaged, Recanned, Split, OutOfCold, IntoCold, XRayed];

    static KeyTable Table(Sentence owner, ImmutableArray<Key> own) =>
        new(
            owner,
            [
                StockEntryKeys.On,
                StockEntryKeys.Lot,
                StockEntryKeys.Units,
                StockEntryKeys.ShortEndOf,
                StockEntryKeys.Piece,
                .. own,
                StockEntryKeys.Note,
            ]
        )
        {
            Either = [StockEntryKeys.Lot, StockEntryKeys.ShortEndOf],
        };
}
