using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loading;

static class InBrightLight
{
    public static readonly RecordCheck Check = new("load/in-bright-light", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        from light in new (string What, Located<LoadingLight>? Light)[] { ("loaded", roll.Load.Light), ("taken out", roll.Unload?.Light) }
            .Concat(roll.Log.OfType<Reload>().Select(r => (What: "threaded again", r.Light)))
        where light.Light?.Value == LoadingLight.Bright
        select Check.At(roll, light.Light!.Place, $"Roll {roll.Name.Value} was {light.What} in bright light, which reaches between the turns of a spool") with
        {
            Help = "Expect flares at the edges for some feet, and tell the lab. Next time use the shade of a coat, or the bag.",
        };
}
