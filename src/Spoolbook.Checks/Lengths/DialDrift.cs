using System.Globalization;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Lengths;

static class DialDrift
{
    public static readonly BookCheck Check = new("length/dial-drift", Level.Warning, Look);

    // A dial belongs to a body: once, however many rolls it was wrong on.
    static IEnumerable<Finding> Look(Context context, Books books) =>
        from dial in DialReadings.Of(books.Shoot)
        let drift = dial.EvenDrift(context.Of(Tolerances.DialSlack))
        where drift is { } part && Math.Abs(part) > context.Of(Tolerances.DialDrift).ToDouble()
        select Find(context, books.Shoot, dial, drift.Value);

    static Finding Find(Context context, ShootBook book, DialReadings dial, double drift)
    {
        var farthest = dial.Rolls.SelectMany(r => r.Readings.Select(reading => (r.Roll, Reading: reading))).MaxBy(r => r.Reading.Strip.Frames);
        var entry = farthest.Reading.Move.Entry;
        var body = context.Production.BodyNamed(dial.Body);
        var feet = Math.Abs(drift * 100).ToString("0.#", CultureInfo.InvariantCulture);
        var more = drift > 0 ? "more" : "less";
        return Check.At(farthest.Roll.Roll, entry.Dial!.Place, $"The footage dial{(body is null ? "" : " of " + body.Name.Value)} tells {feet} % {more} than what went through the gate") with
        {
            Take = (entry as Shoot.Records.Take)?.Slate,
            Piece = body?.Name.Value,
            Others = body is null ? [] : [new(body.Name.Place, "the body")],
            Figures =
            [
                new("dial", context.Write(farthest.Reading.Read)),
                new("by the sheet", context.Write(farthest.Reading.Strip)),
                new("readings", Context.Number(dial.Rolls.Sum(r => r.Readings.Length))),
            ],
            Help = drift > 0
                ? "There is more film left than the dial says. Have it looked at before the next shoot, and write it in the body's `note:`."
                : "There is less film left than the dial says: stop early, or the roll runs out in the take. Have it looked at before the next shoot, and write it in the body's `note:`.",
        };
    }
}
