using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Sounds;

static class TailSlateNotWritten
{
    public static readonly RecordCheck Check = new("sound/tail-slate-not-written", Level.Note, Look);

    // What assistants call a slate at the end of a take.
    static readonly string[] _said = ["tail slate", "tailslate", "tail sticks", "end slate", "end board", "endboard", "end sticks"];

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        where !roll.IsPractice
        from finding in InNotes(roll).Concat(NotSaid(roll))
        select finding;

    static IEnumerable<Finding> InNotes(Roll roll) =>
        from take in roll.Takes
        where IsInNote(take)
        select Check.At(roll, take, take.Note!.Place, Sentence.Of("sound/tail-slate-not-written.message.note", ("take", take.Slate))) with
        {
            Level = Level.Warning,
            Advice = Sentence.Of("sound/tail-slate-not-written.help.note"),
        };

    static IEnumerable<Finding> NotSaid(Roll roll) =>
        from run in Runs.Of(roll.Takes, take => take.RunsInSync && take.SlateAt is null && !IsInNote(take) ? "not said" : null)
        select Check.At(
            roll,
            run.First,
            run.First.Sync!.Place,
            Sentence.Of(
                run.IsOne ? "sound/tail-slate-not-written.message.one" : "sound/tail-slate-not-written.message.many",
                ("takes", run.Slates)
            )
        ) with
        {
            Advice = Sentence.Of("sound/tail-slate-not-written.help"),
        };

    static bool IsInNote(Take take) =>
        take.SlateAt?.Value != SlatePlace.Tail
        && take.Note is { } note
        && _said.Any(said => note.Value.Contains(said, StringComparison.OrdinalIgnoreCase));
}
