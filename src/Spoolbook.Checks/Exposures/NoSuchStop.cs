using System.Collections.Immutable;
using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class NoSuchStop
{
    public static readonly RecordCheck Check = new("exposure/no-such-stop", Level.Note, Look);

    // Far finer than two digits can be.
    const double Hair = 1e-6;

    // Splits are halves, meters give thirds and tenths, and some rings are clicked in quarters.
    static readonly ImmutableArray<int> _steps = [1, 2, 3, 4, 10];

    // Numbers are engraved and shown for halves and thirds.
    static readonly ImmutableArray<int> _series = [2, 3];

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        from take in roll.Takes
        let lens = context.Production.LensNamed(take.Lens?.Value)
        from written in new (Located<Stop>? Stop, string Message)[]
        {
            (take.Stop, "exposure/no-such-stop.message.set"),
            (take.Reading, "exposure/no-such-stop.message.metered"),
        }
        where written.Stop is { } stop && !IsWritten(stop.Value) && !IsOnRing(stop.Value, lens)
        select Check.At(
            roll,
            take,
            written.Stop!.Place,
            Sentence.Of(written.Message, ("take", take.Slate), ("stop", written.Stop.Value.ToString()))
        ) with
        {
            Advice = Sentence.Of("exposure/no-such-stop.help", ("nearest", written.Stop.Value.ToText(StopStep.Third))),
        };

    // A whole stop with a part is exact; a number is one of the series in halves or thirds, to two digits, rounded or cut off.
    static bool IsWritten(Stop stop) =>
        _steps.Any(s => Math.Abs((stop.Av * s) - Math.Round(stop.Av * s)) < Hair)
        || _series.Any(s => IsTwoDigitsOf(stop.Number, Math.Pow(2, Math.Round(stop.Av * s) / s / 2)));

    static bool IsTwoDigitsOf(double number, double exact)
    {
        var digit = Math.Pow(10, Math.Floor(Math.Log10(exact)) - 1);
        return Math.Abs(number - (Math.Round(exact / digit) * digit)) < Hair
            || Math.Abs(number - (Math.Floor(exact / digit) * digit)) < Hair;
    }

    // Wide open, a lens is set to whatever is engraved on it.
    static bool IsOnRing(Stop stop, Lens? lens) =>
        new[] { lens?.Widest, lens?.Smallest }.Any(e => e is not null && Math.Abs(e.Value.Av - stop.Av) < Hair);
}
