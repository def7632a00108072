using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Kits;

static class ShotOutsideLoan
{
    public static readonly RecordCheck Check = new("kit/shot-outside-loan", Level.Warning, Look);

    // Once each way: the first roll before the kit went out, the last after it came back.
    static IEnumerable<Finding> Look(Context context)
    {
        var (loan, rolls) = (context.Production.Loan, context.Production.Rolls.Where(r => UsesTheLoan(context, r)).ToArray());
        if (loan?.On is { } went && rolls.MinBy(r => r.Load.On.Value) is { } first && Day(first.Load.On) < went.Value)
        {
            yield return Find(first, first.Load.On.Place, went, "kit/shot-outside-loan.message.before", "kit/shot-outside-loan.other.went");
        }

        if (
            loan?.BackOn is { } back
            && rolls.Where(r => r.Unload is not null).MaxBy(r => r.Unload!.On.Value) is { Unload: { } unload } last
            && Day(unload.On) > back.Value
        )
        {
            yield return Find(last, unload.On.Place, back, "kit/shot-outside-loan.message.after", "kit/shot-outside-loan.other.back");
        }
    }

    // A body with an owner of its own has other days.
    static bool UsesTheLoan(Context context, Roll roll) =>
        context.Production.BodyNamed(context.WalkOf(roll).End.Body) is { Returned: { Owner: null, BorrowedBy: null } };

    static DateOnly Day(Located<DateTime> on) => DateOnly.FromDateTime(on.Value);

    static Finding Find(Roll roll, Place place, Located<DateOnly> loan, string message, string other) =>
        Check.At(roll, place, Sentence.Of(message, ("roll", roll.Name.Value), ("day", Context.Day(loan.Value)))) with
        {
            Others = [new Related(loan.Place, Sentence.Of(other))],
            Advice = Sentence.Of("kit/shot-outside-loan.help"),
        };
}
