using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loading;

static class NotReady
{
    public static readonly RecordCheck Check = new("load/not-ready", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        from finding in Excepted(roll).Concat(NotLooked(roll))
        select finding;

    static IEnumerable<Finding> Excepted(Roll roll) =>
        from point in roll.Load.NotReady
        select Check.At(roll, point.Place, Sentence.Of(What(point.Value), ("roll", roll.Name.Value))) with
        {
            Advice = Sentence.Of(Help(point.Value)),
        };

    static IEnumerable<Finding> NotLooked(Roll roll) =>
        from ready in new[] { roll.Load.Ready }
        where ready is { Value: false }
        select Check.At(roll, ready.Place, Sentence.Of("load/not-ready.message.none", ("roll", roll.Name.Value))) with
        {
            Advice = Sentence.Of("load/not-ready.help.none"),
        };

    static string What(ReadyPoint point) =>
        point switch
        {
            ReadyPoint.Gate => "load/not-ready.message.gate",
            ReadyPoint.Loops => "load/not-ready.message.loops",
            ReadyPoint.Plate => "load/not-ready.message.plate",
            ReadyPoint.Slot => "load/not-ready.message.slot",
            ReadyPoint.CutOff => "load/not-ready.message.cut-off",
            ReadyPoint.RunTest => "load/not-ready.message.run-test",
            _ => throw new ArgumentOutOfRangeException(nameof(point)),
        };

    static string Help(ReadyPoint point) =>
        point switch
        {
            ReadyPoint.Gate => "load/not-ready.help.gate",
            ReadyPoint.Slot => "load/not-ready.help.slot",
            ReadyPoint.RunTest => "load/not-ready.help.run-test",
            _ => "load/not-ready.help.door",
        };
}
