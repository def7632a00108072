using System.Collections.Concurrent;
using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Checks.Running;

/// <summary>What every check may use: the production, its tolerances, and how to write figures.</summary>
public sealed record Context(Production Production)
{
    /// <summary>How far something may be out in this production.</summary>
    public T Of<T>(Tolerance<T> tolerance) => tolerance.For(Production);

    /// <summary>Feet and frames, or metres, as on the production's papers.</summary>
    public string Write(Footage length) => Production.Units == LengthUnit.Metres ? Metres(length) : length.FeetAndFrames(Production.Gauge);

    /// <summary>A length of film in metres, whatever the production counts in.</summary>
    public string Metres(Footage length) => length.Metres(Production.Gauge).ToText(2) + " m";

    /// <summary>A distance from the film plane, as written; a computed one in feet and inches or in metres.</summary>
    public Sentence Write(Distance distance)
    {
        if (distance.IsInfinity)
        {
            return Sentence.Of("unit.infinity");
        }

        if (distance.Written is { } written)
        {
            return Sentence.Plain(written);
        }

        if (Production.Units == LengthUnit.Metres)
        {
            return Sentence.Plain((distance.Millimetres / 1000).ToText(2) + " m");
        }

        var inches = (distance.Millimetres * 10 / 254).Round();
        return inches % 12 == 0
            ? Sentence.Of("unit.feet", ("feet", Number((long)(inches / 12))))
            : Sentence.Of("unit.feet-and-inches", ("feet", Number((long)(inches / 12))), ("inches", Number((long)(inches % 12))));
    }

    /// <summary>A count of frames: <c>1 frame</c>, <c>12 frames</c>.</summary>
    public static Sentence Frames(long count) => Count(count, "frame");

    /// <summary>A count of things: <c>1 roll</c>, <c>2 rolls</c>.</summary>
    /// <param name="thing">What is counted, as in the words file under <c>unit</c>.</param>
    public static Sentence Count(long count, string thing) =>
        Sentence.Of(count == 1 ? $"unit.{thing}.one" : $"unit.{thing}.many", ("n", Number(count)));

    /// <summary>Things one after the other: <c>a</c>, <c>a and b</c>, <c>a, b and c</c>.</summary>
    public static Sentence And(IEnumerable<Sentence> things) => List("list.and", [.. things]);

    /// <summary>Names one after the other.</summary>
    public static Sentence And(IEnumerable<string> names) => And(names.Select(Sentence.Plain));

    /// <summary>Names to choose from: <c>a or b</c>.</summary>
    public static Sentence Or(IEnumerable<string> names) => List("list.or", [.. names.Select(Sentence.Plain)]);

    static Sentence List(string joined, Sentence[] things)
    {
        var before = things[..^1]
            .Aggregate((Sentence?)null, (a, b) => a is null ? b : Sentence.Of("list.comma", ("before", a), ("last", b)));
        return before is null ? things[^1] : Sentence.Of(joined, ("before", before), ("last", things[^1]));
    }

    /// <summary>From one thing to another: <c>a to b</c>.</summary>
    public static Sentence FromTo(string first, string last) => Sentence.Of("list.to", ("first", first), ("last", last));

    /// <summary>A number of stops, in thirds or halves where it is one: <c>1 stop</c>, <c>1 2/3 stops</c>, <c>0.42 stop</c>.</summary>
    public static Sentence Stops(double stops) => Sentence.Of(stops > 1 + Hair ? "unit.stop.many" : "unit.stop.one", ("n", Thirds(stops)));

    /// <summary>The same number as written in the sheet, without the word: <c>1</c>, <c>1 2/3</c>, <c>0.42</c>.</summary>
    public static string Thirds(double stops)
    {
        var whole = Math.Floor(stops + Hair);
        var part = Parts.FirstOrDefault(p => Math.Abs(stops - whole - p.Value) < Hair).Text;
        return part is null ? stops.ToString("0.##", CultureInfo.InvariantCulture)
            : whole == 0 && part.Length > 0 ? part
            : string.Create(CultureInfo.InvariantCulture, $"{whole} {part}").TrimEnd();
    }

    // A sheet's two thirds are only good to two decimals.
    const double Hair = 0.006;

    static readonly (double Value, string Text)[] Parts = [(0, ""), (1 / 3.0, "1/3"), (0.5, "1/2"), (2 / 3.0, "2/3")];

    /// <summary>Stops from normal as written under <c>exposed:</c>.</summary>
    public static string Exposed(double stops) => stops.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>Stops from normal, with their sign, as a figure: <c>-1</c>, <c>+0.5</c>, <c>0</c>.</summary>
    public static Sentence Amount(double stops) =>
        stops switch
        {
            double.NegativeInfinity => Sentence.Of("unit.black"),
            _ => Sentence.Plain(stops.ToString("+0.##;-0.##;0", CultureInfo.InvariantCulture)),
        };

    /// <summary>A camera speed: <c>24 frames a second</c>.</summary>
    public static Sentence Speed(Speed speed) => Sentence.Of("unit.speed", ("speed", speed.FramesPerSecond.ToShortText(3)));

    /// <summary>A distance in millimetres, computed and not measured.</summary>
    public Sentence Write(double millimetres) =>
        Write(double.IsPositiveInfinity(millimetres) ? Distance.Infinity : new Distance((long)Math.Round(millimetres), false));

    /// <summary>A day as written in the YAML.</summary>
    public static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>A whole number.</summary>
    public static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Each two takes of a shot that follow one another on a roll for the lab, tests left out.</summary>
    public IEnumerable<(Roll Roll, Take Before, Take Take)> TakesOfOneShot() =>
        from roll in Production.Rolls
        where !roll.IsPractice
        from pair in roll.Takes.Zip(roll.Takes.Skip(1))
        where pair is { First.IsTest: false, Second.IsTest: false } && pair.First.ShotName == pair.Second.ShotName
        select (roll, pair.First, pair.Second);

    /// <summary>The rolls for the lab that go on such a day, by day: what is said of a box is said once.</summary>
    public IEnumerable<IGrouping<DateOnly, (Roll Roll, Located<DateOnly> Sent)>> SentOn(Func<DateOnly, bool> isSuch) =>
        from roll in Production.Rolls
        where roll.GoesToLab
        let sent = Production.SentOn(roll)
        where sent is not null && isSuch(sent.Value)
        group (roll, sent) by sent.Value;

    /// <summary>The takes of a roll, each with the body that shot it; null where the kit does not list it.</summary>
    public IEnumerable<(Take Take, Body? Body)> TakesWithBodies(Roll roll) =>
        WalkOf(roll).Takes.Select(t => (t.Take, Production.BodyNamed(t.Moment.After.Body)));

    /// <summary>The walk of a roll's log, for checks on the records, which have no book yet.</summary>
    public RollWalk WalkOf(Roll roll) => _walks.GetOrAdd(roll, r => RollWalk.Of(r));

    // By the object, not its name: a careless sheet can have a roll twice.
    readonly ConcurrentDictionary<Roll, RollWalk> _walks = new(ReferenceEqualityComparer.Instance);
}
