using Spoolbook.Checks.Running;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class DeliveryIncomplete
{
    public static readonly BookCheck Check = new("lab/delivery-incomplete", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context, Books books) => NotToScan(context, books).Concat(NotAllWritten(books));

    // Somebody wrote how to scan, so that a scan is what the editor waits for.
    static IEnumerable<Finding> NotToScan(Context context, Books books) =>
        books.Delivery is { Ordered: { } ordered, Rolls: [] } && context.Production.Rolls.Any(r => r.GoesToLab)
            ?
            [
                Check.At(ordered.Place, Sentence.Of("lab/delivery-incomplete.message.no-scan")) with
                {
                    Advice = Sentence.Of("lab/delivery-incomplete.help.no-scan"),
                },
            ]
            : [];

    static IEnumerable<Finding> NotAllWritten(Books books) =>
        from ordered in new[] { books.Delivery.Ordered }
        where ordered is not null && !books.Delivery.Rolls.IsEmpty
        let missing = Missing(ordered, books.Delivery).ToArray()
        where missing.Length > 0
        select Check.At(
            ordered.Place,
            Sentence.Of("lab/delivery-incomplete.message", ("what", Context.And(missing.Select(m => m.What))))
        ) with
        {
            Advice = Sentence.Of("lab/delivery-incomplete.help", ("keys", string.Join(", ", missing.Select(m => $"`{m.Key}:`")))),
        };

    static IEnumerable<(string Key, Sentence What)> Missing(Deliver ordered, DeliveryBook book)
    {
        (string Key, string What, bool IsWritten)[] keys =
        [
            ("raster", "lab/delivery-incomplete.value.raster", ordered.Raster is not null),
            ("bits", "lab/delivery-incomplete.value.bits", ordered.Bits is not null),
            ("log", "lab/delivery-incomplete.value.log", ordered.IsLog is not null),
            ("rate", "lab/delivery-incomplete.value.rate", ordered.Rate is not null),
            ("framing", "lab/delivery-incomplete.value.framing", ordered.Framing is not null || ordered.Overscan is not null),
            ("takes", "lab/delivery-incomplete.value.takes", ordered.Takes is not null),
            ("naming", "lab/delivery-incomplete.value.naming", ordered.Naming is not null),
            ("drive", "lab/delivery-incomplete.value.drive", ordered.Drive is not null),
            ("sound", "lab/delivery-incomplete.value.sound", ordered.Sound is not null || !DeliveryBook.SyncTakes(book.Rolls).Any()),
        ];
        return keys.Where(k => !k.IsWritten).Select(k => (k.Key, Sentence.Of(k.What)));
    }
}
