using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using System.Globalization;

namespace Spoolbook.Checks.Stocks;

static class Expired
{
    public static readonly RecordCheck Check = new("stock/expired", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from lot in context.Production.Lots
        let expires = lot.Expires
        where expires is not null && lot.Practice?.Value != true
        let late = context.Production.Rolls.FirstOrDefault(r => !r.IsPractice && context.Production.LotOf(r) == lot && DateOnly.FromDateTime(r.Load.On.Value) > expires.Value)
        where late is not null
        select Check.At(late, late.Load.On.Place, $"Roll {late.Name.Value} was loaded after its stock expired") with
        {
            Others = [new(expires.Place, $"lot {lot.Name.Value} expires")],
            Figures =
            [
                new("expired", Context.Day(expires.Value)),
                new("loaded", late.Load.On.Value.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
            ],
            Help = "Shoot a test and have it processed first; tell the lab the age of the stock. If it is used on purpose, accept it with that reason.",
        };
}
