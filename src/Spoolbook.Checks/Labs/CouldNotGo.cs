using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class CouldNotGo
{
    public static readonly RecordCheck Check = new("lab/could-not-go", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        let naming = Consigned.To(context.Production, roll).Select(c => c.Naming).FirstOrDefault()
        let finding = SuppressedScope(roll, naming) ?? InTheCamera(roll, naming, context.Production.SentOn(roll))
        where finding is not null
        select finding;

    static Finding? SuppressedScope(Roll roll, Located<string>? naming) =>
        naming is null || roll.Lab?.Send is not { Value: false } held
            ? null
            : Check.At(roll, naming.Place, Sentence.Of("lab/could-not-go.message.held-back", ("roll", roll.Name.Value))) with
            {
                Others = [new(held.Place, Sentence.Of("lab/could-not-go.other.held-back"))],
                Advice = Sentence.Of("lab/could-not-go.help.held-back"),
            };

    static Finding? InTheCamera(Roll roll, Located<string>? naming, Located<DateOnly>? sent)
    {
        if (sent is null || (roll.Unload is { } out_ && DateOnly.FromDateTime(out_.On.Value) <= sent.Value))
        {
            return null;
        }

        var says = roll.Unload is { } unload
            ? Sentence.Of(
                "lab/could-not-go.message.too-late",
                ("roll", roll.Name.Value),
                ("sent", Context.Day(sent.Value)),
                ("out", Context.Day(DateOnly.FromDateTime(unload.On.Value)))
            )
            : Sentence.Of("lab/could-not-go.message.never-out", ("roll", roll.Name.Value), ("sent", Context.Day(sent.Value)));
        return Check.At(roll, (naming ?? roll.Name).Place, says) with
        {
            Others =
            [
                new(sent.Place, Sentence.Of("lab/could-not-go.other.the-day-on-which-it-went")),
                .. roll.Unload is { } found
                    ? [new Related(found.On.Place, Sentence.Of("lab/could-not-go.other.taken-out"))]
                    : (Related[])[],
            ],
            Advice = roll.Unload is null ? Sentence.Of("lab/could-not-go.help.never-out") : Sentence.Of("lab/could-not-go.help.days"),
        };
    }
}
