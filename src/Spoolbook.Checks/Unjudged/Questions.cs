using System.Collections.Immutable;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Checks.Unjudged;

/// <summary>
/// What could not be judged. "No errors" is a promise about what was looked at, so the end of every check says what was
/// not. A key that a production never uses is one line, not one for each take.
/// </summary>
public static class Questions
{
    /// <summary>The name under which <c>explain</c> says how to give what is missing.</summary>
    public const string Topic = "not-looked-at";

    static readonly ImmutableArray<Question> All =
    [
        OfTakes("not-looked-at.exposure", "reading", t => t is { Reading: null, Timed: null }),
        OfTakes("not-looked-at.stop", "stop", t => t.Stop is null),
        OfTakes("not-looked-at.lens", "lens", t => t.Lens is null),
        OfTakes("not-looked-at.focus", "focus", t => t.Focus is null),
        OfTakes("not-looked-at.distance", "measured", t => t is { Focus.Value.IsInfinity: false, Measured: [] }),
        new("not-looked-at.colour", "light", Takes, ColourTakes),
        new("not-looked-at.flicker", "lamps", Takes, p => ShotTakes(p).Where(t => MayFlicker(p, t)).Select(t => t.Number.Place)),
        new("not-looked-at.finder", "finder", Takes, TakesWithNoEyeAtTheFinder),
        OfTakes("not-looked-at.hours", "at", t => t.At is null),
        new("not-looked-at.counter", "counter", Rolls, p => RollsWithout(p, e => e.Counter is not null)),
        new("not-looked-at.dial", "dial", Rolls, p => RollsWithout(p, e => e.Dial is not null)),
        new("not-looked-at.spring", "wind", Rolls, p => Counted(p).Where(r => IsNeverWound(p, r)).Select(r => r.Name.Place)),
        new("not-looked-at.meter", "meter", Takes, UnnamedMeters),
        new("not-looked-at.sync", "sync", Takes, TakesOnSyncMotors),
        new("not-looked-at.push-most", "push-most", Rolls, RollsPushedSomehow),
        new("not-looked-at.run-off", "lens", Rolls, p => RollsWith<RunOff>(p, r => r.Capped is null)),
        new("not-looked-at.rewind", "shutter", Rolls, p => RollsWith<Rewind>(p, r => r.ShutterClosed is null && r.InDark?.Value != true)),
        OfRolls("not-looked-at.body", "body", r => r.Body is null),
        OfRolls("not-looked-at.lot", "lot", r => r is { Lot: null, ShortEndOf: null }),
        OfRolls("not-looked-at.loaded-in", "light", r => r.Load.Light is null),
        OfRolls("not-looked-at.head", "head", r => r.Load.Head is null),
        OfRolls("not-looked-at.loops", "loops", r => r.Load.LoopsSet is null),
        OfRolls("not-looked-at.plate", "plate", r => r.Load.PlateClosed is null),
        new("not-looked-at.ready", "ready", Rolls, RollsWithoutReadyList),
        OfRolls("not-looked-at.speed-after", "speed-after", r => r.Load.SpeedAfter is null),
        OfRolls("not-looked-at.unloaded-in", "light", r => r.Unload is { Light: null }),
        OfRolls("not-looked-at.tail", "tail", r => r.Unload is { Tail: null }),
        new("not-looked-at.totals", "totals", Rolls, RollsNotAddedUp),
        OfRolls("not-looked-at.unloaded-by", "by", r => r.Unload is { By: null }),
        OfLots("not-looked-at.emulsion", "emulsion", l => l.Emulsion is null),
        OfLots("not-looked-at.expiry", "expires", l => l.Expires is null),
        new("not-looked-at.perforation", "perforation", Lots, LotsForSprockets),
        new("not-looked-at.winding", "winding", Lots, LotsWoundSomehow),
        OfLots("not-looked-at.price", "unit-price", l => l.UnitPrice is null),
        new("not-looked-at.reciprocity", "reciprocity", Lots, LotsHeldOpen),
        new("not-looked-at.ring", "widest", Lenses, p => p.Lenses.Where(l => l is { Widest: null } or { Smallest: null }).Select(Place)),
        new("not-looked-at.nearest", "nearest", Lenses, p => p.Lenses.Where(l => l.Nearest is null).Select(Place)),
        new("not-looked-at.made-for", "made-for", Lenses, ShortLensesForSomeFinder),
        new("not-looked-at.focal", "focal", Lenses, p => p.Lenses.Where(l => l.Focal is null).Select(Place)),
        new("not-looked-at.speeds", "speeds", Bodies, p => p.Bodies.Where(b => b is { Speeds: [] }).Select(Place)),
        new("not-looked-at.shutter", "shutter", Bodies, p => p.Bodies.Where(b => b.ShutterAngle is null).Select(Place)),
        new("not-looked-at.marks", "marks", Bodies, BodiesThatFade),
        new("not-looked-at.full-wind", "full-wind", Bodies, BodiesOnSprings),
        new("not-looked-at.takes-at-most", "takes", Bodies, p => p.Bodies.Where(b => b.Takes is null).Select(Place)),
        new("not-looked-at.finder-loss", "finder-loss", Bodies, p => p.Bodies.Where(b => b.FinderLoss is null).Select(Place)),
        new("not-looked-at.loading-speed", "loading-speed", Bodies, p => p.Bodies.Where(b => b.LoadingSpeed is null).Select(Place)),
        new("not-looked-at.serial", "serial", Pieces, PiecesWithoutSerial),
        new("not-looked-at.filter", "stops", Filters, p => p.Filters.Where(f => f.Stops is null).Select(f => f.Name.Place)),
        OfAll("not-looked-at.shot-list", "shots", p => p.Shots is []),
        new("not-looked-at.screen", "screen", Shots, p => p.Shots.Where(s => s.Screen is null).Select(s => s.Scene.Place)),
        OfAll("not-looked-at.days", "days", p => p.Days is []),
        OfAll("not-looked-at.length-of-film", "plan", p => p.RunningTime is null && p.Shots.All(s => s.Screen is null)),
        OfAll("not-looked-at.cost", "rates", p => p.Rates is null),
        OfAll("not-looked-at.return", "due", p => p.Bodies.Length > 0 && p.Loan?.Due is null),
        OfAll("not-looked-at.loan-days", "on", p => p.Loan is { On: null }),
        OfAll("not-looked-at.loan-end", "back-on", p => p.Loan is { BackOn: null } && IsCountedIn(p)),
        new("not-looked-at.back", "back", Pieces, PiecesNotCounted),
    ];

    /// <summary>What the checks could not judge in a production, in the order of its importance on set.</summary>
    /// <remarks>What seems missing from a part that could not be read may well be there, so it is not asked for.</remarks>
    /// <param name="findings">What they found: behind an error on a roll they look no further.</param>
    public static ImmutableArray<NotLookedAt> Of(Production production, IEnumerable<Finding> findings) =>
        [
            .. BehindErrors(production, findings),
            .. from question in All
            where production.Unread.IsEmpty
            let places = question.Open(production).ToImmutableArray()
            where places.Length > 0
            select new NotLookedAt(
                question.Name,
                Sentence.Of(question.Words, ("things", question.Count(places.Length))),
                question.Key,
                places
            ),
        ];

    static IEnumerable<NotLookedAt> BehindErrors(Production production, IEnumerable<Finding> findings)
    {
        var wrong = findings.Where(f => f.Level == Level.Error).Select(f => f.Roll).ToHashSet();
        var rolls = production.Rolls.Where(r => wrong.Contains(r.Name.Value)).ToArray();
        if (rolls.Length > 0)
        {
            var names = Context.And(rolls.Select(r => r.Name.Value));
            yield return new NotLookedAt(
                "after-errors",
                Sentence.Of("not-looked-at.after-errors", ("things", names)),
                "log",
                [.. rolls.Select(r => r.Name.Place)]
            );
        }
    }

    /// <summary>Every name of what may not have been looked at, with the record's key for it.</summary>
    public static IEnumerable<(string Name, string Key)> Names => All.Select(q => (q.Name, q.Key));

    /// <summary>The page that <c>explain</c> prints for <see cref="Topic"/>.</summary>
    public static string Page
    {
        get
        {
            using var reader = new StreamReader(typeof(Questions).Assembly.GetManifestResourceStream(Topic)!);
            return reader.ReadToEnd().ReplaceLineEndings("\n");
        }
    }

    static Question OfTakes(string words, string key, Func<Take, bool> isOpen) =>
        new(words, key, Takes, p => ShotTakes(p).Where(isOpen).Select(t => t.Number.Place));

    static Question OfRolls(string words, string key, Func<Roll, bool> isOpen) =>
        new(words, key, Rolls, p => Counted(p).Where(isOpen).Select(r => r.Name.Place));

    static Question OfLots(string words, string key, Func<StockLot, bool> isOpen) =>
        new(words, key, Lots, p => p.Lots.Where(l => l.Practice?.Value != true && isOpen(l)).Select(l => l.Name.Place));

    static Question OfAll(string words, string key, Func<Production, bool> isOpen) =>
        new(words, key, _ => Sentence.Plain(""), p => isOpen(p) ? [p.Place] : []);

    static Sentence Takes(long count) => Context.Count(count, "take");

    static Sentence Rolls(long count) => Context.Count(count, "roll");

    static Sentence Lots(long count) => Context.Count(count, "lot");

    static Sentence Lenses(long count) => Context.Count(count, "lens");

    static Sentence Bodies(long count) => Context.Count(count, "body");

    static Sentence Filters(long count) => Context.Count(count, "filter");

    static Sentence Pieces(long count) => Context.Count(count, "piece");

    static Sentence Shots(long count) => Context.Count(count, "shot");

    static Place Place(Lens lens) => lens.Name.Place;

    static Place Place(Body body) => body.Name.Place;

    static IEnumerable<Roll> Counted(Production production) => production.Rolls.Where(r => !r.IsPractice);

    // A test take is out of the way on purpose.
    static IEnumerable<Take> ShotTakes(Production production) =>
        Counted(production).SelectMany(r => r.Takes).Where(t => t.Mark.Value != Mark.Test);

    // Black-and-white film takes any light.
    static IEnumerable<Place> ColourTakes(Production production) =>
        from roll in Counted(production)
        where production.LotOf(roll)?.Balance != ColourBalance.None
        from take in roll.Takes
        where take.Mark.Value != Mark.Test && production.LightOf(take) is null
        select take.Number.Place;

    static IEnumerable<Place> RollsWithout(Production production, Func<LogEntry, bool> isRead) =>
        Counted(production).Where(r => r.Log.Length > 0 && !r.Log.Any(isRead)).Select(r => r.Name.Place);

    static IEnumerable<Place> RollsWith<T>(Production production, Func<T, bool> isOpen)
        where T : LogEntry => Counted(production).Where(r => r.Log.OfType<T>().Any(isOpen)).Select(r => r.Name.Place);

    // With one meter in the kit there is nothing to ask.
    static IEnumerable<Place> UnnamedMeters(Production production) =>
        production.Meters.Length < 2
            ? []
            : ShotTakes(production).Where(t => t is { Reading: not null, Meter: null }).Select(t => t.Number.Place);

    static IEnumerable<Place> PiecesWithoutSerial(Production production) =>
        production
            .Bodies.Where(b => b.Serial is null)
            .Select(Place)
            .Concat(production.Lenses.Where(l => l.Serial is null).Select(Place))
            .Concat(production.Meters.Where(m => m.Serial is null).Select(m => m.Name.Place))
            .Concat(production.Motors.Where(m => m.Serial is null).Select(m => m.Name.Place));

    // The kit was counted in, and this piece was left out of the count.
    static IEnumerable<Place> PiecesNotCounted(Production production) =>
        IsCountedIn(production) ? KitBook.PiecesOf(production).Where(p => p.Returned.Back is null).Select(p => p.Name.Place) : [];

    static bool IsCountedIn(Production production) => KitBook.PiecesOf(production).Any(p => p.Returned.Back is not null);

    // A motor that holds its speed is taken along for sound; where nobody recorded any, there is nothing to ask.
    static IEnumerable<Place> TakesOnSyncMotors(Production production) =>
        ShotTakes(production).Any(t => t.Sync?.Value == true)
            ? ShotTakes(production)
                .Where(t => t is { Sync: null, Mute: null, IsFrameByFrame: false })
                .Where(t => production.MotorNamed(t.Motor?.Value) is { Sync.Value: true })
                .Select(t => t.Number.Place)
            : [];

    static IEnumerable<Place> RollsPushedSomehow(Production production) =>
        production.Lab is { PushMost: null }
            ? Counted(production).Where(r => r.Lab?.Push is { Value: not 0 }).Select(r => r.Name.Place)
            : [];

    // Daylight does not flicker, and single frames do not beat with the mains.
    static bool MayFlicker(Production production, Take take) =>
        take is { SingleFrames: null, Interval: null, Timed: null }
        && production.LightOf(take) is { Value: not SubjectLight.Daylight }
        && production.LampsOf(take) is null;

    static bool IsNeverWound(Production production, Roll roll) =>
        !roll.Log.OfType<Wind>().Any()
        && RollWalk.Of(roll).Takes.Any(t => t.Take.IsOnSpring && production.BodyNamed(t.Moment.After.Body)?.FullWind is not null);

    // A crew that adds up the foot of its sheets does so on each, with the same boxes; one that never does is not asked.
    static IEnumerable<Place> RollsNotAddedUp(Production production)
    {
        var added = Counted(production).Select(r => r.Totals).OfType<SheetTotals>().ToArray();
        return Counted(production).Where(r => r.Unload is not null && added.Any(other => HasMore(other, r))).Select(r => r.Name.Place);
    }

    // A box that the other sheet has, and for which this roll has film.
    static bool HasMore(SheetTotals other, Roll roll)
    {
        var own = roll.Totals;
        return own is null
            || (other.Good is not null && own.Good is null && HasTake(Mark.Good))
            || (other.Hold is not null && own.Hold is null && HasTake(Mark.Hold))
            || (other.NoGood is not null && own.NoGood is null && HasTake(Mark.NoGood))
            || (other.Waste is not null && own.Waste is null)
            || (other.Loaded is not null && own.Loaded is null)
            || (other.Takes is not null && own.Takes is null);

        bool HasTake(Mark mark) => roll.Takes.Any(t => t.Mark.Value == mark);
    }

    // A body that a take was shot with on no motor has a spring.
    static IEnumerable<Place> BodiesOnSprings(Production production)
    {
        var onSpring = Counted(production)
            .SelectMany(r => RollWalk.Of(r).Takes)
            .Where(t => t.Take.IsOnSpring)
            .Select(t => t.Moment.After.Body)
            .ToHashSet(StringComparer.Ordinal);
        return production.Bodies.Where(b => b.FullWind is null && onSpring.Contains(b.Name.Value)).Select(Place);
    }

    // Where a body says which rows its sprockets work in, the stock can be wrong for it.
    static IEnumerable<Place> LotsForSprockets(Production production) =>
        production.Bodies.Any(b => b.Sprockets is not null)
            ? production.Lots.Where(l => l.Perforation is null && l.Practice?.Value != true).Select(l => l.Name.Place)
            : [];

    // A crew that ticks the ready list does so at each load; one that never does is asked for its parts alone.
    static IEnumerable<Place> RollsWithoutReadyList(Production production) =>
        Counted(production).Any(r => r.Load.Ready is not null)
            ? Counted(production).Where(r => r.Load.Ready is null && r.Log.Length > 0).Select(r => r.Name.Place)
            : [];

    // A timer shoots while nobody looks. Where nobody ever writes it, it is not asked for.
    static IEnumerable<Place> TakesWithNoEyeAtTheFinder(Production production) =>
        Counted(production).SelectMany(r => r.Takes).Any(t => t.FinderClosed is not null)
            ? Counted(production)
                .SelectMany(r => RollWalk.Of(r).Takes)
                .Where(t => t.Take is { Interval: not null, FinderClosed: null } && t.Take.Mark.Value != Mark.Test)
                .Where(t => production.BodyNamed(t.Moment.After.Body) is { HasPrism: true })
                .Select(t => t.Take.Number.Place)
            : [];

    // Where another body has marks, one without them has a fixed shutter, and its fades are a finding.
    static IEnumerable<Place> BodiesThatFade(Production production)
    {
        var faded = production.Bodies.All(b => b.ShutterMarks.IsEmpty)
            ? Counted(production)
                .SelectMany(r => RollWalk.Of(r).Takes)
                .Where(t => t.Take.FadeIn is { Value.Frames: > 0 } || t.Take.FadeOut is { Value.Frames: > 0 })
                .Select(t => t.Moment.After.Body)
                .ToHashSet(StringComparer.Ordinal)
            : [];
        return production.Bodies.Where(b => faded.Contains(b.Name.Value)).Select(Place);
    }

    static IEnumerable<Place> LotsWoundSomehow(Production production) =>
        production.Bodies.Any(b => b.Winding is not null)
            ? production
                .Lots.Where(l => l is { Perforation.Value: 1, Winding: null } && l.Practice?.Value != true)
                .Select(l => l.Name.Place)
            : [];

    // Where one lens says what it was made for, the ring of the others says it too. Long ones are made for both.
    static IEnumerable<Place> ShortLensesForSomeFinder(Production production) =>
        production.Lenses.Any(l => l.MadeFor is not null)
            ? production
                .Lenses.Where(l => l is { MadeFor: null, Focal: { } focal } && focal.Value <= Tolerances.PrismFocal.Usual)
                .Select(Place)
            : [];

    static IEnumerable<Place> LotsHeldOpen(Production production)
    {
        var lots = Counted(production).Where(r => r.Takes.Any(t => t.Timed is not null)).Select(production.LotOf).ToHashSet();
        return production.Lots.Where(l => l.Reciprocity is null && lots.Contains(l)).Select(l => l.Name.Place);
    }
}
