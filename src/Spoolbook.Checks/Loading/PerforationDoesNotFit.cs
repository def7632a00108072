using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loading;

static class PerforationDoesNotFit
{
    public static readonly RecordCheck Check = new("load/perforation-does-not-fit", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) => context.Production.Rolls.SelectMany(roll => Of(context, roll));

    static IEnumerable<Finding> Of(Context context, Roll roll)
    {
        if (context.Production.LotOf(roll) is not { Perforation: { } rows } lot)
        {
            yield break;
        }

        if (rows.Value == 2 && context.Production.Gauge == Gauge.Super16)
        {
            yield return Check.At(
                roll,
                rows.Place,
                Sentence.Of("load/perforation-does-not-fit.message.wide", ("roll", roll.Name.Value))
            ) with
            {
                Advice = Sentence.Of("load/perforation-does-not-fit.help.wide"),
            };
        }

        var bodies = context.WalkOf(roll).All.Select(m => m.After.Body).Distinct().Select(context.Production.BodyNamed).OfType<Body>();
        foreach (var body in bodies.Where(_ => rows.Value == 1))
        {
            if (body.Sprockets is { Value: 2 } teeth)
            {
                yield return Check.At(
                    roll,
                    rows.Place,
                    Sentence.Of("load/perforation-does-not-fit.message.torn", ("roll", roll.Name.Value), ("body", body.Name.Value))
                ) with
                {
                    Others = [new(teeth.Place, Sentence.Of("load/perforation-does-not-fit.other.teeth"))],
                    Advice = Sentence.Of("load/perforation-does-not-fit.help.torn"),
                };
            }
            else if (lot.Winding is { } wound && body.Winding is { } takes && wound.Value != takes.Value)
            {
                yield return Check.At(
                    roll,
                    wound.Place,
                    Sentence.Of(
                        "load/perforation-does-not-fit.message.other-side",
                        ("roll", roll.Name.Value),
                        ("body", body.Name.Value),
                        ("wound", wound.Value.ToString()),
                        ("takes", takes.Value.ToString())
                    )
                ) with
                {
                    Others = [new(takes.Place, Sentence.Of("load/perforation-does-not-fit.other.winding"))],
                    Advice = Sentence.Of("load/perforation-does-not-fit.help.other-side"),
                };
            }
        }
    }
}
