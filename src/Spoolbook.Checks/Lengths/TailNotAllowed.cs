using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Lengths;

static class TailNotAllowed
{
    public static readonly RecordCheck Check = new("length/tail-not-allowed", Level.Warning, Look);

    // In the dark no light reaches the film, and what is cut off is a choice.
    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice && roll.Unload is not null && roll.Takes.Any()
        let unload = roll.Unload
        where
            unload.Tail is { } tail
                ? unload.Light is { Value: not LoadingLight.Dark } && tail.Value < context.Of(Tolerances.EndsLeast)
                : unload.Light?.Value != LoadingLight.Dark
        select Check.At(
            roll,
            unload.Tail?.Place ?? unload.Place,
            unload.Tail is null or { Value.Frames: 0 }
                ? Sentence.Of("length/tail-not-allowed.message.nothing", ("roll", roll.Name.Value))
                : Sentence.Of(
                    "length/tail-not-allowed.message.short",
                    ("roll", roll.Name.Value),
                    ("tail", context.Write(unload.Tail.Value))
                )
        ) with
        {
            Others = unload is { Tail: not null, Light: { } light }
                ? [new Related(light.Place, Sentence.Of("length/tail-not-allowed.other"))]
                : [],
            Advice = Sentence.Of("length/tail-not-allowed.help"),
        };
}
