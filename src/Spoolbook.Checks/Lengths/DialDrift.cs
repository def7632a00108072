using System.Globalization;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Lengths;

static class DialDrift
{
    public static readonly BookCheck Check = new("length/dial-drift", Level.Warning, Look);

    // A dial belongs to a body: one finding, however many rolls it was wrong on.
    static IEnumerable<Finding> Look(Context context, Books books) =>
        from dial in DialReadings.Collect(books.Shoot)
        let drift = dial.EvenDrift(context.Of(Tolerances.DialSlack))
        where drift is { } part && Math.Abs(part) > context.Of(Tolerances.DialDrift).ToDouble()
        select Find(context, books.Shoot, dial, drift.Value);

    static Finding Find(Context context, ShootBook book, DialReadings dial, double drift)
    {
        var farthest = dial
            .Rolls.SelectMany(r => r.Readings.Select(reading => (r.Roll, Reading: reading)))
            .MaxBy(r => r.Reading.Strip.Frames);
        var entry = farthest.Reading.Move.Entry;
        var body = context.Production.BodyNamed(dial.Body);
        var feet = Math.Abs(drift * 100).ToString("0.#", CultureInfo.InvariantCulture);
        return Check.At(farthest.Roll.Roll, entry.Dial!.Place, Describe(body, feet, drift > 0)) with
        {
            Take = (entry as Take)?.Slate,
            Piece = body?.Name.Value,
            Others = body is null ? [] : [new(body.Name.Place, Sentence.Of("length/dial-drift.other.the-body"))],
            Figures =
            [
                new(Sentence.Of("length/dial-drift.figure.dial"), context.Write(farthest.Reading.Read)),
                new(Sentence.Of("length/dial-drift.figure.by-the-sheet"), context.Write(farthest.Reading.Strip)),
                new(Sentence.Of("length/dial-drift.figure.readings"), Context.Number(dial.Rolls.Sum(r => r.Readings.Length))),
            ],
            Advice = drift > 0 ? Sentence.Of("length/dial-drift.help.more") : Sentence.Of("length/dial-drift.help.less"),
        };
    }

    static Sentence Describe(Body? body, string percent, bool more) =>
        body is null
            ? Sentence.Of(more ? "length/dial-drift.message.more" : "length/dial-drift.message.less", ("percent", percent))
            : Sentence.Of(
                more ? "length/dial-drift.message.of-body-more" : "length/dial-drift.message.of-body-less",
                ("body", body.Name.Value),
                ("percent", percent)
            );
}
