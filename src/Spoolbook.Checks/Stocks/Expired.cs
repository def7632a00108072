using System.Globalization;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Stocks;

static class Expired
{
    public static readonly RecordCheck Check = new("stock/expired", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from lot in context.Production.Lots
        let expires = lot.Expires
        where expires is not null && lot.Practice?.Value != true
        let late = context.Production.Rolls.FirstOrDefault(r =>
            !r.IsPractice && context.Production.LotOf(r) == lot && DateOnly.FromDateTime(r.Load.On.Value) > expires.Value
        )
        where late is not null
        select Check.At(late, late.Load.On.Place, Sentence.Of("stock/expired.message", ("late", late.Name.Value))) with
        {
            Others = [new(expires.Place, Sentence.Of("stock/expired.other.lot-expires", ("lot", lot.Name.Value)))],
            Figures =
            [
                new(Sentence.Of("stock/expired.figure.expired"), Context.Day(expires.Value)),
                new(Sentence.Of("stock/expired.figure.loaded"), late.Load.On.Value.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
            ],
            Advice = Sentence.Of("stock/expired.help"),
        };
}
