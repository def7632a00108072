using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class FinderPracticeMixed
{
    public static readonly RecordCheck Check = new("exposure/finder-practice-mixed", Level.Warning, Look, NeedsAll: true);

    /// <summary>A take whose metered time shows which practice it was metered by.</summary>
    sealed record Metered(Roll Roll, Take Take, FinderPractice Practice, ExposureTime Marked, ExposureTime Adapted);

    // One finding for each roll and body: the meter was set once.
    static IEnumerable<Finding> Look(Context context) =>
        from body in context.Production.Bodies
        let metered = Of(context, body).ToArray()
        let usual = metered.FirstOrDefault(m => m.Practice == context.Production.MeterFor)
        where usual is not null
        from odd in metered.Where(m => m.Practice != context.Production.MeterFor).GroupBy(m => m.Roll)
        select Find(context, body, [.. odd], usual);

    static Finding Find(Context context, Body body, Metered[] odd, Metered usual)
    {
        var first = odd[0];
        // At the same speed, give the time that the meter already reads; the computed one may differ by a hair.
        var should =
            first.Take.Speed == usual.Take.Speed ? usual.Take.MeteredAt!.Value
            : context.Production.MeterFor == FinderPractice.Adapted ? first.Adapted
            : first.Marked;
        var apart = Context.Stops(Math.Round(first.Marked.StopsOver(first.Adapted), 2));
        return Check.At(first.Roll, first.Take, first.Take.MeteredAt!.Place, Describe(odd, usual, apart)) with
        {
            Others =
            [
                new(usual.Take.MeteredAt!.Place, Sentence.Of("exposure/finder-practice-mixed.other.take", ("take", usual.Take.Slate))),
                new(body.FinderLoss!.Place, Sentence.Of("exposure/finder-practice-mixed.other.what-the-finder-takes")),
            ],
            Figures =
            [
                new(Sentence.Of("exposure/finder-practice-mixed.figure.time-as-marked"), first.Marked.ToString()),
                new(Sentence.Of("exposure/finder-practice-mixed.figure.less-the-finder-s-part"), first.Adapted.ToString()),
                new(Sentence.Of("exposure/finder-practice-mixed.figure.between-the-two"), apart),
                new(
                    Sentence.Of("exposure/finder-practice-mixed.figure.the-production-meters-for"),
                    Sentence.Of(
                        context.Production.MeterFor == FinderPractice.Adapted
                            ? "exposure/finder-practice-mixed.value.adapted"
                            : "exposure/finder-practice-mixed.value.marked"
                    )
                ),
            ],
            Advice = Sentence.Of(
                context.Production.MeterFor == FinderPractice.Adapted
                    ? "exposure/finder-practice-mixed.help.under"
                    : "exposure/finder-practice-mixed.help.over",
                ("should", should.ToString()),
                ("speed", Context.Speed(first.Take.Speed)),
                ("apart", apart)
            ),
        };
    }

    static IEnumerable<Metered> Of(Context context, Body body)
    {
        if (body is not { FinderLoss: { Value.Sign: > 0 } loss, ShutterAngle: { } angle } || loss.Value >= 1 || angle.Value > 360)
        {
            return [];
        }

        return from roll in context.Production.Rolls
               where !roll.IsPractice
               from shot in context.TakesWithBodies(roll)
               where shot.Body == body && shot.Take is { MeteredAt: not null, Timed: null, SingleFrames: null }
               let set = shot.Take.MeteredAt!.Value
               let marked = ExposureTime.Of(new Shutter(angle.Value), shot.Take.Speed)
               let adapted = marked.Adapted(loss.Value)
               let practice = PracticeOf(context, set, marked, adapted)
               where practice is not null
               select new Metered(roll, shot.Take, practice.Value, marked, adapted);
    }

    // The nearer of the two times; null where it is near neither, and the meter was set for something else.
    static FinderPractice? PracticeOf(Context context, ExposureTime set, ExposureTime marked, ExposureTime adapted)
    {
        var (toMarked, toAdapted) = (Math.Abs(set.StopsOver(marked)), Math.Abs(set.StopsOver(adapted)));
        return Math.Min(toMarked, toAdapted) > context.Of(Tolerances.MeterTime) ? null
            : toAdapted < toMarked ? FinderPractice.Adapted
            : FinderPractice.Marked;
    }

    static Sentence Describe(Metered[] odd, Metered usual, Sentence apart) =>
        Sentence.Of(
            (odd.Length == 1, odd[0].Practice) switch
            {
                (true, FinderPractice.Adapted) => "exposure/finder-practice-mixed.message.one-adapted",
                (true, _) => "exposure/finder-practice-mixed.message.one-marked",
                (false, FinderPractice.Adapted) => "exposure/finder-practice-mixed.message.many-adapted",
                (false, _) => "exposure/finder-practice-mixed.message.many-marked",
            },
            ("takes", Context.Count(odd.Length, "take")),
            ("first", odd[0].Take.Slate),
            ("set", odd[0].Take.MeteredAt!.Value.ToString()),
            ("other", usual.Take.Slate),
            ("other-set", usual.Take.MeteredAt!.Value.ToString()),
            ("apart", apart)
        );
}
