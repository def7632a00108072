using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Speeds;

static class LeftAtLoadingSpeed
{
    public static readonly RecordCheck Check = new("speed/left-at-loading-speed", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        let loading = context.Production.BodyNamed(roll.Body?.Value)?.LoadingSpeed
        let after = roll.Load.SpeedAfter
        where !roll.IsPractice && loading is not null && after is not null
        where after.Value == loading.Value && after.Value != context.Production.ProjectedAt
        let first = roll.Takes.FirstOrDefault()
        where first is { SpeedWritten: null }
        select Check.At(roll, first, after.Place, $"The camera was left at {after.Value} frames a second after loading, and take {first.Slate} does not say that it was set back") with
        {
            Others = [new(loading.Place, "the speed that it is loaded at")],
            Figures = [new("loading speed", loading.Value.ToString()), new("projected at", context.Production.ProjectedAt.ToString())],
            Help = $"If it was set back, write `speed-after: {context.Production.ProjectedAt}`. If the take is meant to be slow, write its speed: `speed: {after.Value}`.",
        };
}
