using System.Globalization;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class UnlikelyRate
{
    // No value added or sales tax is above 27 % (Hungary's, since 2012: from memory).
    const decimal MostTax = 0.30m;

    // Labs push by two stops and, if asked, by three (common practice).
    const double MostStops = 4;

    // A stop of push costs a part of the process, seldom all of it (common practice).
    const decimal MostPush = 1;

    // What a foot costs in the lab is of one size, whatever is done to it: a scan some one to four times the bath, and raw
    // stock much the same (common practice). A slipped digit is ten times.
    const decimal MostTimes = 7;

    // A lab's minimum is the price of a spool or two, and preparing one roll costs less than its bath (common practice).
    const int MostFeet = 400;
    const int FewestFeet = 15;
    const int ASpool = 200;

    const decimal FeetInAMetre = 1 / 0.3048m;

    public static readonly RecordCheck Check = new("lab/unlikely-rate", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context)
    {
        if (context.Production.Rates is not { } rates)
        {
            return OfLab(context.Production.Lab);
        }

        // The cheapest and the dearest bath: which rolls need which is not asked here.
        var feet = rates.Processes.Select(p => AFoot(p.Length)).ToList();
        return
        [
            .. OfLab(context.Production.Lab),
            .. OfAlone(rates),
            .. rates.Processes.Select(p => NotRun(context, p)).OfType<Finding>(),
            .. rates.Processes.SelectMany(p => OfProcess(p, feet)),
            .. feet is [] ? [] : Beside(context, rates, feet.Max()),
        ];
    }

    static IEnumerable<Finding> OfLab(Lab? lab)
    {
        if (lab?.PushMost is { } most && most.Value > MostStops)
        {
            yield return Find(most.Place, Sentence.Of("lab/unlikely-rate.message.push-most", ("figure", Context.Thirds(most.Value))));
        }
    }

    static IEnumerable<Finding> OfAlone(Rates rates)
    {
        if (rates.Tax is { } tax && tax.Value > MostTax)
        {
            yield return Find(tax.Place, Sentence.Of("lab/unlikely-rate.message.tax", ("figure", Percent(tax.Value))));
        }

        if (rates.PushPerStop is { Value.Part: { } part } push && part > MostPush)
        {
            yield return Find(push.Place, Sentence.Of("lab/unlikely-rate.message.push", ("figure", Percent(part))));
        }
    }

    // A roll that needs it is an error of its own.
    static Finding? NotRun(Context context, ProcessRate rate) =>
        context.Production.Lab is not { Processes.Length: > 0 } lab
        || lab.Processes.Any(p => Orders.Plain(p.Value) == Orders.Plain(rate.Process.Value))
        || ProcessNotRun.Check.Look(context).Any()
            ? null
            : Find(rate.Process.Place, Sentence.Of("lab/unlikely-rate.message.not-run", ("process", rate.Process.Value))) with
            {
                Level = Level.Note,
                Others = [new Related(lab.Processes[0].Place, Sentence.Of("lab/process-not-run.other.what-the-lab-runs"))],
                Advice = Sentence.Of("lab/unlikely-rate.help.not-run"),
            };

    static IEnumerable<Finding> OfProcess(ProcessRate rate, List<decimal> feet)
    {
        var foot = AFoot(rate.Length);
        if (foot > MostTimes * feet.Min())
        {
            yield return Find(
                rate.Length.Price.Place,
                Sentence.Of("lab/unlikely-rate.message.process", ("process", rate.Process.Value), ("times", Times(foot, feet.Min())))
            );
        }

        if (rate.Minimum is { } least && foot > 0 && least.Value > 0 && least.Value / foot is > MostFeet or < FewestFeet)
        {
            yield return Find(
                least.Place,
                Sentence.Of(
                    "lab/unlikely-rate.message.minimum",
                    ("process", rate.Process.Value),
                    ("feet", Math.Round(least.Value / foot).ToString(CultureInfo.InvariantCulture))
                )
            );
        }
    }

    static IEnumerable<Finding> Beside(Context context, Rates rates, decimal bath)
    {
        if (rates.PrepPerRoll is { } prep && prep.Value > ASpool * bath)
        {
            yield return Find(prep.Place, Sentence.Of("lab/unlikely-rate.message.prep", ("feet", Context.Number(ASpool))));
        }

        if (rates.Scan is { } scan && AFoot(scan) > MostTimes * bath)
        {
            yield return Find(scan.Price.Place, Sentence.Of("lab/unlikely-rate.message.scan", ("times", Times(AFoot(scan), bath))));
        }

        if (rates.Workprint is { } print && AFoot(print) > MostTimes * bath)
        {
            yield return Find(print.Price.Place, Sentence.Of("lab/unlikely-rate.message.print", ("times", Times(AFoot(print), bath))));
        }

        foreach (var lot in context.Production.Lots)
        {
            if (lot.UnitPrice is { } price && FeetOf(context, lot) is > 0 and var feet && price.Value / feet > MostTimes * bath)
            {
                yield return Find(
                    price.Place,
                    Sentence.Of("lab/unlikely-rate.message.stock", ("lot", lot.Name.Value), ("times", Times(price.Value / feet, bath)))
                );
            }
        }
    }

    static Finding Find(Place place, Sentence message) => Check.At(place, message) with { Advice = Sentence.Of("lab/unlikely-rate.help") };

    static decimal AFoot(LengthRate rate) => rate.By == LengthUnit.Metres ? rate.Price.Value / FeetInAMetre : rate.Price.Value;

    static decimal FeetOf(Context context, StockLot lot) =>
        (decimal)(lot.Length.Value.Frames / context.Production.Gauge.FramesPerFoot).ToDouble();

    static string Percent(decimal part) => (part * 100).ToString("0.##", CultureInfo.InvariantCulture);

    static string Times(decimal price, decimal other) =>
        other == 0 ? "∞" : Math.Round(price / other).ToString(CultureInfo.InvariantCulture);
}
