using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

/// <summary>How far a stock forgives, either way.</summary>
static class Latitude
{
    public static double Over(Context context, Roll roll) => IsReversal(context, roll) ? context.Of(Tolerances.ReversalLatitude) : context.Of(Tolerances.NegativeOver);

    public static double Under(Context context, Roll roll) => IsReversal(context, roll) ? context.Of(Tolerances.ReversalLatitude) : context.Of(Tolerances.NegativeUnder);

    /// <summary>The figures behind every finding on a reading.</summary>
    public static IEnumerable<Figure> Figures(Metering metering)
    {
        yield return new Figure("reading", metering.Take.Reading!.Value.ToString());
        if (metering.FilterLoss != 0)
        {
            yield return new Figure("filters", $"take {Context.Stops(metering.FilterLoss)}");
        }

        if (metering.ShutterLoss != 0)
        {
            yield return new Figure("shutter", $"takes {Context.Stops(metering.ShutterLoss)}");
        }

        if (metering.Take.Exposed is { } meant)
        {
            yield return new Figure("meant", $"{Context.Stops(Math.Abs(meant.Value))} {(meant.Value < 0 ? "under" : "over")}");
        }

        yield return new Figure("comes to", metering.Needed.ToText(Film.StopStep.Third));
        yield return new Figure("set", metering.Take.Stop!.Value.ToString());
    }

    static bool IsReversal(Context context, Roll roll) =>
        context.Production.LotOf(roll)?.Process.Value is { } process
        && (process.Contains("reversal", StringComparison.OrdinalIgnoreCase) || process.Equals("e-6", StringComparison.OrdinalIgnoreCase));
}
