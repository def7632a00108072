using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

static class PlanKeys
{
    public static readonly ValueKey<Film.Ratio> RunningTime = new("running-time", TimeForms.Duration, "Planned running time.")
    {
        Example = "4min",
    };
    public static readonly ValueKey<Film.Ratio> Ratio = new("ratio", NumberForms.AboveZero, "Planned shooting ratio: the n of n:1.")
    {
        Example = "5",
    };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.plan"), [RunningTime, Ratio]);
}
