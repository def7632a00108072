using CsCheck;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Tests.Sheets;

/// <summary>
/// Random rolls for laws: short, so that the twin is quick, and with everything that a log can have, in any order,
/// including careless positions outside the roll.
/// </summary>
static class AnyRoll
{
    const int Longest = 300;

    static readonly Gen<Footage> Position = Gen.Frequency((20, Gen.Long[0, Longest]), (1, Gen.Long[-40, Longest + 60]))
        .Select(Sheets.Sheet.Frames);

    static readonly Gen<Footage> Short = Gen.Long[0, 60].Select(Sheets.Sheet.Frames);

    // What drove the camera: mostly the spring, at times a motor, a hand, or frame by frame; or the key in the take.
    static readonly Gen<Func<Take, Take>> Drive = Gen.Frequency<Func<Take, Take>>(
        (6, Gen.Const<Func<Take, Take>>(t => t)),
        (1, Gen.Const<Func<Take, Take>>(t => t with { Motor = Sheets.Sheet.Written("E1") })),
        (1, Gen.Const<Func<Take, Take>>(t => t with { HandCranked = Sheets.Sheet.Written(true) })),
        (1, Gen.Const<Func<Take, Take>>(t => t with { SingleFrames = Sheets.Sheet.Written(2) })),
        (1, Gen.Const<Func<Take, Take>>(t => t with { Wound = Sheets.Sheet.Written(true) }))
    );

    static readonly Gen<Func<Sheet, Sheet>> TakeLine =
        from to in Position
        from start in Perhaps(Position, 3)
        from mark in Gen.Enum<Mark>()
        from fadeIn in Perhaps(Short, 3)
        from fadeOut in Perhaps(Short, 3)
        from exposed in Perhaps(Gen.Double[-3, 2], 3)
        from shutter in Gen.OneOf(new[] { "open", "quarter", "half", "closed", "", "" }.Select(Gen.Const).ToArray())
        from drive in Drive
        select new Func<Sheet, Sheet>(s =>
            s.Take($"1A/{s.Roll.Log.Length + 1}", to, start, mark, fadeIn, fadeOut, exposed, shutter.Length == 0 ? null : shutter, drive)
        );

    static readonly Gen<Func<Sheet, Sheet>> OtherLine = Gen.Frequency<Func<Sheet, Sheet>>(
        (
            5,
            from to in Position
            from closed in Gen.Bool
            from dark in Gen.Bool
            select new Func<Sheet, Sheet>(s => s.Rewind(to, closed, dark))
        ),
        (2, from to in Position from capped in Gen.Bool select new Func<Sheet, Sheet>(s => s.RunOff(to, capped))),
        (2, from before in Short from after in Short select new Func<Sheet, Sheet>(s => s.Fog(before, after))),
        (
            2,
            from moved in Perhaps(Gen.Long[-80, 80].Select(Sheets.Sheet.Frames), 1)
            from lost in Perhaps(Short, 1)
            from to in Perhaps(Position, 3)
            select new Func<Sheet, Sheet>(s => s.Reload(moved, lost, to, "B2"))
        ),
        (2, Gen.Const<Func<Sheet, Sheet>>(s => s.Wind())),
        (1, Gen.Const<Func<Sheet, Sheet>>(s => s.Remark("clouds")))
    );

    // Random days and hours: mostly none, some at night, some on another day, some plainly wrong.
    static readonly Gen<Func<Sheet, Sheet>> Hours =
        from hour in Perhaps(Gen.Int[0, 23], 2)
        from date in Perhaps(Gen.Int[0, 3], 4)
        from day in Perhaps(Gen.Int[0, 3], 9)
        select new Func<Sheet, Sheet>(s => s.At(hour, date, day));

    // A night from the evening on, in order: an hour or two from line to line.
    static readonly Gen<Func<Sheet, Sheet>[]> Night =
        from evening in Gen.Int[18, 23]
        from steps in Gen.Int[0, 2].Array[12]
        select steps
            .Select((_, i) => (evening + steps.Take(i).Sum()) % 24)
            .Select(hour => new Func<Sheet, Sheet>(s => s.At(hour)))
            .ToArray();

    static readonly Gen<Func<Sheet, Sheet>> Loading = Short.Select(head => new Func<Sheet, Sheet>(s => s.Head(head)));

    static readonly Gen<Func<Sheet, Sheet>> Unloading =
        from tail in Perhaps(Short, 1)
        from left in Perhaps(Gen.Enum<Remainder>(), 1)
        from later in Gen.Int[0, 3]
        from hour in Gen.Int[0, 23]
        select new Func<Sheet, Sheet>(s => s.Unload(tail, left, Sheets.Sheet.FirstDay.AddDays(later).ToDateTime(new TimeOnly(hour, 0))));

    public static Gen<Sheet> Sheet { get; } =
        from loaded in Gen.Long[1, Longest]
        from load in Perhaps(Loading)
        from lines in Gen.Frequency((3, TakeLine), (2, OtherLine)).Array[0, 12]
        from unload in Perhaps(Unloading)
        from hours in Gen.Frequency((3, Hours.Array[12]), (1, Night))
        let dated = lines.Zip(hours, (line, hour) => new Func<Sheet, Sheet>(s => hour(line(s))))
        select dated.Prepend(load).Append(unload).Aggregate(Sheets.Sheet.Of(Sheets.Sheet.Frames(loaded)), (sheet, line) => line(sheet));

    static Gen<T?> Perhaps<T>(Gen<T> written, int missing)
        where T : struct => Gen.Frequency((1, written.Select(v => (T?)v)), (missing, Gen.Const((T?)null)));

    static Gen<Func<Sheet, Sheet>> Perhaps(Gen<Func<Sheet, Sheet>> line) =>
        Gen.Frequency((2, line), (1, Gen.Const<Func<Sheet, Sheet>>(s => s)));
}
