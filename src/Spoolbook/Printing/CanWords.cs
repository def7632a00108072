using Spoolbook.Checks.Running;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Cans;

namespace Spoolbook.Printing;

/// <summary>What to write on the cans of a roll that was taken out: what their labels say.</summary>
internal static class CanWords
{
    /// <summary>The lines.</summary>
    public static IEnumerable<string> Of(RollBook roll, Books books, int width)
    {
        var (record, production, context) = (roll.Roll, books.Production, new Context(books.Production));
        var (lot, day) = (production.LotOf(record), Context.Day(DateOnly.FromDateTime(record.Unload!.On.Value)));
        if (!record.IsUnshot)
        {
            yield return "On the can:";
            string[] parts =
            [
                CanCode.Of(production, record).ToString(),
                .. lot is null ? (string[])[] : [$"{lot.Stock.Value}, {lot.Name.Value}"],
                roll.LabWork.Process ?? "process not stated",
                .. roll.LabWork.Push == 0 ? (string[])[] : [$"push {Context.Exposed(roll.LabWork.Push)}"],
                .. (record.Rated ?? lot?.Index) is { } rated ? (string[])[$"rated {Context.Number(rated.Value)}"] : [],
                $"{context.Write(roll.Tally.Exposed)} of {context.Write(roll.Strip.Loaded)} exposed",
                .. record.Body is { } body ? (string[])[body.Value] : [],
                day,
                "EXPOSED",
            ];
            foreach (
                var line in WrappedText.Lines(parts.Select((p, i) => i == 0 ? "  " + Plain.Escaped(p) : Plain.Escaped(p)), " · ", width, 2)
            )
            {
                yield return line;
            }
        }

        foreach (var end in books.Stock.ShortEnds.Where(e => ReferenceEquals(e.Parent, record) && e.OnHand.Frames > 0))
        {
            yield return end.IsRecan ? "On the can:" : "On the short end's can:";
            string[] parts =
            [
                "  " + (end.IsRecan ? record.Name.Value : end.Name),
                $"{end.Lot.Stock.Value}, {end.Lot.Name.Value}",
                context.Write(end.OnHand),
                day,
                "UNEXPOSED",
            ];
            foreach (var line in WrappedText.Lines(parts.Select(Plain.Escaped), " · ", width, 2))
            {
                yield return line;
            }
        }
    }
}
