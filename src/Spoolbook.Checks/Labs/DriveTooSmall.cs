using Spoolbook.Checks.Running;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class DriveTooSmall
{
    public static readonly BookCheck Check = new("lab/drive-too-small", Level.Warning, Look);

    static IEnumerable<Finding> Look(Context context, Books books) =>
        from drive in new[] { books.Delivery.Ordered?.Drive }
        where drive is { Value.Sign: > 0 }
        from sending in books.Cost.Sendings
        let rolls = books.Delivery.Of(sending)
        let gigabytes = books.Delivery.Files(rolls).Gigabytes
        where gigabytes > drive.Value
        select Check.At(
            drive.Place,
            Sentence.Of(
                rolls.Length == 1 ? "lab/drive-too-small.message.one" : "lab/drive-too-small.message.many",
                ("rolls", Context.And(rolls.Select(r => r.Roll.Roll.Name.Value))),
                ("drive", drive.Value.ToShortText(1)),
                ("needed", gigabytes.Value.Ceiling().ToString(System.Globalization.CultureInfo.InvariantCulture))
            )
        ) with
        {
            Advice = Sentence.Of("lab/drive-too-small.help"),
        };
}
