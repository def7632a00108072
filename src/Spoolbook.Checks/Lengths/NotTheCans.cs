using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Lengths;

static class NotTheCans
{
    public static readonly BookCheck Check = new("length/not-the-cans", Level.Note, Look);

    // A spool may hold some feet more than its can says, never less.
    static IEnumerable<Finding> Look(Context context, Books books) =>
        from load in books.Stock.Loads
        where load.IsUnit && !load.Roll.IsPractice
        let length = load.Roll.Length
        where length is not null && (length.Value < load.Said || length.Value > load.Said + context.Of(Tolerances.ShortEndSlack))
        select Find(context, load.Roll, load.Lot, length, load.Said);

    static Finding Find(Context context, Roll roll, StockLot lot, Located<Footage> length, Footage said) =>
        Check.At(
            roll,
            length.Place,
            Sentence.Of(
                "length/not-the-cans.message",
                ("roll", roll.Name.Value),
                ("length", context.Write(length.Value)),
                ("said", context.Write(said))
            )
        ) with
        {
            Others = [new Related(lot.Length.Place, Sentence.Of("length/not-the-cans.other"))],
            Figures =
            [
                new(Sentence.Of("length/not-the-cans.figure"), context.Write(new Footage(Math.Abs(length.Value.Frames - said.Frames)))),
            ],
            Advice = Sentence.Of("length/not-the-cans.help"),
        };
}
