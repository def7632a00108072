using Spoolbook.Checks.Running;
using Spoolbook.Film.Scans;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class SyncWithoutRatio
{
    public static readonly BookCheck Check = new("lab/sync-without-ratio", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context, Books books) =>
        from ordered in new[] { books.Delivery.Ordered }
        where ordered is { Rate: not null }
        from take in DeliveryBook.SyncTakes(books.Delivery.Rolls).GroupBy(layer => layer.Take.Speed).Select(same => same.First().Take)
        where IsPossible(context, take)
        let change = new RateChange(take.Speed, books.Delivery.Rate)
        let written = ordered.SoundRatio
        where written is null ? !change.IsNone : written.Value != change.Ratio
        select Check.At(
            written?.Place ?? ordered.Rate!.Place,
            Sentence.Of(
                written is null ? "lab/sync-without-ratio.message.none" : "lab/sync-without-ratio.message.another",
                ("take", take.Slate),
                ("camera", take.Speed.ToString()),
                ("file", books.Delivery.Rate.ToString()),
                ("written", written?.Value.ToString() ?? "")
            )
        ) with
        {
            Others = [new(take.Sync!.Place, Sentence.Of("lab/sync-without-ratio.other.in-sync"))],
            Figures = [new(Sentence.Of("lab/sync-without-ratio.figure.sound"), PercentOf(change) + " %")],
            Advice = Sentence.Of("lab/sync-without-ratio.help", ("ratio", change.Ratio.ToString())),
        };

    // A speed that the motor does not have is a slip of its own.
    static bool IsPossible(Context context, Take take) =>
        context.Production.MotorNamed(take.Motor?.Value) is not { Speeds.IsEmpty: false } motor
        || motor.Speeds.Any(s => s.Value == take.Speed);

    /// <summary>How far from the speed of recording, in per cent, without a sign: <c>4.16667</c>, <c>0.1</c>.</summary>
    public static string PercentOf(RateChange change) =>
        (change.Percent.Sign < 0 ? -change.Percent : change.Percent).ToShortText(change.Percent < 1 ? 2 : 5);
}
