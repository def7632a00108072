using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Lengths;

static class LeftDiffers
{
    public static readonly RollCheck Check = new("length/left-differs", Level.Warning, Round.Strips, Look);

    // A short end is measured by eye, or by the thickness of the pack.
    static IEnumerable<Finding> Look(Context context, RollBook book)
    {
        var (roll, books) = (book.Roll, book.Strip.Left.Length);
        if (roll.IsPractice || roll.Unload?.Left is not { } left)
        {
            yield break;
        }

        var apart = new Footage(Math.Abs(left.Value.Frames - books.Frames));
        if (apart <= context.Of(Tolerances.ShortEndSlack))
        {
            yield break;
        }

        var isMore = left.Value > books;
        yield return Check.At(
            roll,
            left.Place,
            Sentence.Of(
                isMore ? "length/left-differs.message.more" : "length/left-differs.message.less",
                ("roll", roll.Name.Value),
                ("left", context.Write(left.Value)),
                ("books", context.Write(books))
            )
        ) with
        {
            Others = book.Strip.Moves is [.., var last]
                ? [new Related(last.Entry.Place, Sentence.Of("length/left-differs.other.last"))]
                : [],
            Figures =
            [
                new Figure(Sentence.Of("length/left-differs.figure.measured"), context.Write(left.Value)),
                new Figure(Sentence.Of("length/left-differs.figure.by-the-log"), context.Write(books)),
                new Figure(Sentence.Of("length/left-differs.figure.apart-by"), context.Write(apart)),
            ],
            Advice = Sentence.Of(isMore ? "length/left-differs.help.more" : "length/left-differs.help.less"),
        };
    }
}
