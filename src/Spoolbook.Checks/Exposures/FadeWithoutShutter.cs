using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class FadeWithoutShutter
{
    public static readonly RecordCheck Check = new("exposure/fade-without-shutter", Level.Warning, Look);

    // Once for each body: either its marks are wrong, or all its fades are.
    static IEnumerable<Finding> Look(Context context) =>
        from faded in from roll in context.Production.Rolls
                      from shot in context.TakesWithBodies(roll)
                      let fade = Fade(shot.Take.FadeOut) ?? Fade(shot.Take.FadeIn)
                      where fade is not null && shot.Body is not null && CannotClose(context, shot.Body)
                      group (roll, shot.Take, fade) by shot.Body
        let body = faded.Key
        let first = faded.First()
        select Check.At(
            first.roll,
            first.Take,
            first.fade.Place,
            Sentence.Of("exposure/fade-without-shutter.message", ("take", first.Take.Slate), ("body", body.Name.Value))
        ) with
        {
            Others = [new Related(body.Name.Place, Sentence.Of("exposure/fade-without-shutter.other"))],
            Advice = Sentence.Of("exposure/fade-without-shutter.help"),
        };

    static Located<Footage>? Fade(Located<Footage>? written) => written is { Value.Frames: > 0 } ? written : null;

    // Where no body has marks, nobody wrote them down.
    static bool CannotClose(Context context, Body body) =>
        body.ShutterMarks.IsEmpty
            ? context.Production.Bodies.Any(b => !b.ShutterMarks.IsEmpty)
            : body.ShutterMarks.All(m => m.Open.Value.Sign > 0);
}
