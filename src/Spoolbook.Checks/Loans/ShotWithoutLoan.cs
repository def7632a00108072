using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Loans;

static class ShotWithoutLoan
{
    public static readonly RecordCheck Check = new("loan/shot-without-loan", Level.Warning, Look);

    // Once for each body: the first roll that no loan covers.
    static IEnumerable<Finding> Look(Context context) =>
        from body in context.Production.Bodies
        where body.Place.IsAbove
        let loans = context.Production.SchoolLoans.Where(l => l.Piece.Value == body.Name.Value).ToArray()
        let stay = context
            .Production.Rolls.SelectMany(r => context.WalkOf(r).Stays)
            .Where(s => s.Body == body.Name.Value && !loans.Any(l => l.Covers(DateOnly.FromDateTime(s.From))))
            .MinBy(s => s.From)
        where stay is not null
        select Check.At(
            stay.Roll,
            stay.In,
            Sentence.Of(
                loans.Length == 0 ? "loan/shot-without-loan.message.none" : "loan/shot-without-loan.message.outside",
                ("roll", stay.Roll.Name.Value),
                ("body", body.Name.Value),
                ("day", Context.Day(DateOnly.FromDateTime(stay.From)))
            )
        ) with
        {
            Piece = body.Name.Value,
            Others = [.. loans.Select(l => new Related(l.Out.Place, Sentence.Of("loan/shot-without-loan.other")))],
            Advice = Sentence.Of("loan/shot-without-loan.help"),
        };
}
