using Spoolbook.Film.Exposures;

namespace Spoolbook.Film.Reckonings;

/// <summary>The stop to set, and how it is worked out.</summary>
public static class ExposureReckoning
{
    /// <summary>The times and the sum of stops; where the light is known, also the stop to set.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Light, an index or a constant that is not above zero.</exception>
    public static Reckoning Of(ExposureQuestion question)
    {
        var conditions = question.Conditions;
        var balance = Exposure.Combine(conditions);
        var metered = Metered(question);
        var toSet = metered is { } stop ? balance.StopToSet(stop) : null;
        return new Reckoning(
            "Exposure",
            [
                .. toSet is { } set ? StopLines("stop to set", set) : [],
                new ReckoningLine("from what the meter gives", ReckoningText.Stops(balance.Total), "stops", Finite(balance.Total)),
                .. TimeLines(conditions),
                .. LongTimeLines(conditions),
            ],
            [
                .. metered is { } asked ? MeterLines(question, asked) : [],
                .. balance.Terms.Select(term => new ReckoningLine(
                    term.Name,
                    ReckoningText.Stops(term.Stops),
                    $"stops: {term.Reckoning}",
                    Finite(term.Stops)
                )),
                .. UntabledLines(conditions),
                new ReckoningLine("sum", ReckoningText.Stops(balance.Total), "stops", Finite(balance.Total)),
            ]
        );
    }

    static Stop? Metered(ExposureQuestion question)
    {
        var time = ReferenceTime(question.Conditions);
        return question switch
        {
            { Metered: { } stop } => stop,
            { IncidentLux: { } lux } => MeterLaw.StopFor(MeterLaw.IncidentEv(lux, question.Index, question.C), time),
            { ReflectedCandelas: { } candelas } => MeterLaw.StopFor(MeterLaw.ReflectedEv(candelas, question.Index, question.K), time),
            { Daylight: { } kind } => Exposures.Daylight.StopFor(kind, question.Index, time),
            _ => null,
        };
    }

    static ExposureTime ReferenceTime(ExposureConditions conditions) =>
        ExposureTime.Of(conditions.ReferenceShutter, conditions.ReferenceSpeed);

    static IEnumerable<ReckoningLine> StopLines(string label, Stop stop)
    {
        yield return new(label, stop.ToText(StopStep.Third), "nearest third", stop.Number);
        yield return new("in tenths", stop.ToText(StopStep.Tenth), "", stop.Number);
    }

    static IEnumerable<ReckoningLine> TimeLines(ExposureConditions conditions)
    {
        if (Exposure.TimeOf(conditions) is not { } time)
        {
            yield return ReckoningLine.Of("time", "black");
            yield break;
        }

        yield return new("time", time.ToString(), "", time.Seconds.ToDouble());
        if (conditions.FinderLoss is { } loss)
        {
            var adapted = time.Adapted(loss);
            yield return new("time to meter for", adapted.ToString(), "", adapted.Seconds.ToDouble());
        }
    }

    static IEnumerable<ReckoningLine> LongTimeLines(ExposureConditions conditions)
    {
        if (conditions.Reciprocity is not { } law || conditions.Timed is not { } timed)
        {
            yield break;
        }

        var seconds = timed.Seconds.ToDouble();
        if (law is ReciprocityTable table && table.EndsBefore(seconds))
        {
            var least = table.LeastAt(seconds);
            yield return new(
                "reciprocity failure",
                $"at least {ReckoningText.Number(least, 2)}",
                $"stops: the table ends at {ExposureTime.Write(table.Points[^1].Seconds)}, so test it",
                least
            );
        }
        else if (law.HeldFor(seconds) is { } held && held > seconds)
        {
            yield return new("or held open, lens as metered", ExposureTime.Write(held), "in place of opening up", Finite(held));
        }
    }

    static IEnumerable<ReckoningLine> MeterLines(ExposureQuestion question, Stop metered)
    {
        var reference = ReferenceTime(question.Conditions);
        if (question.Metered is null)
        {
            yield return ReckoningLine.Of("index", question.Index, 1, "EI");
            yield return LightLine(question);
        }

        yield return new("the meter gives", metered.ToText(StopStep.Tenth), $"at {reference}", metered.Number);
    }

    // Printed, because without this line the sum looks as if no correction were needed.
    static IEnumerable<ReckoningLine> UntabledLines(ExposureConditions conditions)
    {
        if (
            conditions.Reciprocity is ReciprocityTable table
            && Exposure.TimeOf(conditions) is { } time
            && time.Seconds.ToDouble() < table.Points[0].Seconds
        )
        {
            yield return ReckoningLine.Of(
                "reciprocity failure",
                "not counted",
                table.HeldFor(time.Seconds.ToDouble()) is null
                    ? $"the stock's table says nothing of {time}"
                    : $"for {time} the stock's table has only the longer time"
            );
        }
    }

    static ReckoningLine LightLine(ExposureQuestion question) =>
        question switch
        {
            { IncidentLux: { } lux } => ReckoningLine.Of(
                "incident light",
                lux,
                1,
                $"lx, with C = {ReckoningText.Number(question.C, 1)} lx s"
            ),
            { ReflectedCandelas: { } candelas } => ReckoningLine.Of(
                "reflected light",
                candelas,
                1,
                $"cd/m², with K = {ReckoningText.Number(question.K, 2)}"
            ),
            _ => ReckoningLine.Of("daylight", Exposures.Daylight.Ev100(question.Daylight.GetValueOrDefault()), 2, "EV at 100"),
        };

    static double? Finite(double stops) => double.IsFinite(stops) ? stops : null;
}
