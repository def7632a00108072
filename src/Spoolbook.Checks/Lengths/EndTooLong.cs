using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Lengths;

static class EndTooLong
{
    public static readonly RecordCheck Check = new("length/end-too-long", Level.Note, Look);

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        from end in new (Located<Footage>? End, string Message)[]
        {
            (roll.Load.Head, "length/end-too-long.message.head"),
            (roll.Unload?.Tail, "length/end-too-long.message.tail"),
        }
        where end.End is not null && end.End.Value > context.Of(Tolerances.EndsMost)
        select Check.At(
            roll,
            end.End.Place,
            Sentence.Of(end.Message, ("roll", roll.Name.Value), ("end", context.Write(end.End.Value)))
        ) with
        {
            Figures = [new Figure(Sentence.Of("length/end-too-long.figure"), context.Write(context.Of(Tolerances.EndsMost)))],
            Advice = Sentence.Of("length/end-too-long.help"),
        };
}
