using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Speeds;

static class BetweenMarks
{
    public static readonly RecordCheck Check = new("speed/between-marks", Level.Note, Look);

    // One setting of the dial, however many takes keep it.
    sealed record Setting(Body Body, Located<Speed> Speed);

    static IEnumerable<Finding> Look(Context context)
    {
        var slips = SetupDiffers.Check.Look(context).Select(f => f.Place).ToHashSet();
        return context.Production.Rolls.Where(r => !r.IsPractice).SelectMany(r => Of(context, r)).Where(f => !slips.Contains(f.Place));
    }

    static IEnumerable<Finding> Of(Context context, Roll roll) =>
        from setting in SettingsOf(context, roll).Distinct()
        let marks = setting.Body.Speeds.Select(s => s.Value).ToArray()
        let speed = setting.Speed.Value
        let below = marks.Where(m => m < speed).ToArray()
        let above = marks.Where(m => m > speed).ToArray()
        where !marks.Contains(speed) && below.Length > 0 && above.Length > 0
        select Check.At(
            roll,
            setting.Speed.Place,
            Sentence.Of(
                "speed/between-marks.message",
                ("speed", speed.ToString()),
                ("body", setting.Body.Name.Value),
                ("slower", below.Max().ToString()),
                ("faster", above.Min().ToString())
            )
        ) with
        {
            Others = [new Related(setting.Body.Speeds[0].Place, Sentence.Of("speed/between-marks.other"))],
            Figures = [new Figure(Sentence.Of("speed/between-marks.figure"), string.Join(", ", marks.Select(m => m.ToString())))],
            Advice = Sentence.Of("speed/between-marks.help", ("speed", speed.ToString()), ("body", setting.Body.Name.Value)),
        };

    // A motor turns the camera at its own speed, a hand at any, and frame by frame the dial says nothing.
    static IEnumerable<Setting> SettingsOf(Context context, Roll roll)
    {
        if (context.Production.BodyNamed(roll.Body?.Value) is { Speeds.Length: > 1 } loaded && roll.Load.SpeedAfter is { } after)
        {
            yield return new Setting(loaded, after);
        }

        foreach (var (take, body) in context.TakesWithBodies(roll))
        {
            if (take is { SpeedWritten: { } speed, IsOnSpring: true, IsFrameByFrame: false } && body is { Speeds.Length: > 1 })
            {
                yield return new Setting(body, speed);
            }
        }
    }
}
