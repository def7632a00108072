using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

/// <summary>How far over or under a stock can be exposed.</summary>
static class Latitude
{
    public static double Over(Context context, Roll roll) =>
        IsReversal(context, roll) ? context.Of(Tolerances.ReversalLatitude) : context.Of(Tolerances.NegativeOver);

    public static double Under(Context context, Roll roll) =>
        IsReversal(context, roll) ? context.Of(Tolerances.ReversalLatitude) : context.Of(Tolerances.NegativeUnder);

    /// <summary>The figures for every finding on a meter reading.</summary>
    public static IEnumerable<Figure> Figures(Metering metering)
    {
        yield return new Figure(Sentence.Of("exposure/reading.figure.reading"), metering.Take.Reading!.Value.ToString());
        if (metering.FilterLoss != 0)
        {
            yield return new Figure(
                Sentence.Of("exposure/reading.figure.filters"),
                Sentence.Of("exposure/reading.value.filters", ("stops", Context.Stops(metering.FilterLoss)))
            );
        }

        if (metering.ShutterLoss != 0)
        {
            yield return new Figure(
                Sentence.Of("exposure/reading.figure.shutter"),
                Sentence.Of("exposure/reading.value.shutter", ("stops", Context.Stops(metering.ShutterLoss)))
            );
        }

        if (metering.Take.Exposed is { } meant)
        {
            yield return new Figure(Sentence.Of("exposure/reading.figure.meant"), OverOrUnder(meant.Value));
        }

        yield return new Figure(Sentence.Of("exposure/reading.figure.comes-to"), metering.Needed.ToText(Film.StopStep.Third));
        yield return new Figure(Sentence.Of("exposure/reading.figure.set"), metering.Take.Stop!.Value.ToString());
    }

    /// <summary>Stops off, and which way: <c>1 stop under</c>.</summary>
    public static Sentence OverOrUnder(double stops) =>
        Sentence.Of(
            stops < 0 ? "exposure/reading.value.under" : "exposure/reading.value.over",
            ("stops", Context.Stops(Math.Round(Math.Abs(stops), 2)))
        );

    static bool IsReversal(Context context, Roll roll) =>
        context.Production.LotOf(roll)?.Process.Value is { } process && ProcessKind.IsReversal(process);
}
