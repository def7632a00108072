using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loading;

static class InBrightLight
{
    public static readonly RecordCheck Check = new("load/in-bright-light", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice && !context.Production.Gauge.ComesInCartridges
        from light in new (string What, Located<LoadingLight>? Light)[]
        {
            ("load/in-bright-light.message.loaded", roll.Load.Light),
            ("load/in-bright-light.message.taken-out", roll.Unload?.Light),
        }.Concat(roll.Log.OfType<Reload>().Select(r => (What: "load/in-bright-light.message.threaded-again", r.Light)))
        where light.Light?.Value == LoadingLight.Bright
        select Check.At(roll, light.Light!.Place, Sentence.Of(light.What, ("roll", roll.Name.Value))) with
        {
            Advice = Sentence.Of("load/in-bright-light.help"),
        };
}
