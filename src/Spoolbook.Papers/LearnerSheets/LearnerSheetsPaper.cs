using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.LearnerSheets;

/// <summary>What to learn beside the ready list, a sheet for each who wants it.</summary>
internal sealed class LearnerSheetsPaper : IPaper
{
    public IEnumerable<PaperJob> Jobs(PaperSource source)
    {
        if (!source.Production.Learners.IsEmpty)
        {
            yield return new PaperJob("learner-sheets", "learner-sheets.html", source.Words["learner-sheets"], _ => Of(source));
        }
    }

    static LearnerSheetsFacts Of(PaperSource source)
    {
        var (production, format) = (source.Production, source.Format);
        return new LearnerSheetsFacts(source.Head)
        {
            Sheets = [.. production.Learners.Select(l => new LearnerSheet(format.Person(l.Value), Practised(l.Value, production, format)))],
            ReadyList = string.Join(", ", ReadyWords.All(source.Words)),
            Turrets = [.. production.Bodies.Where(b => !b.Turret.IsEmpty).Select(b => Turret(b, format))],
        };
    }

    static string Practised(string id, Production production, PaperFormat format) =>
        string.Join(
            ", ",
            from roll in production.Rolls
            where roll.IsPractice && roll.Load.By?.Value == id
            select $"{roll.Name.Value}, {format.DateAndTime(roll.Load.On.Value)}"
        );

    static string Turret(Body body, PaperFormat format) =>
        RollPhrases.Body(body)
        + ": "
        + string.Join(
            ", ",
            body.Turret.Select(
                (lens, hole) => format.Words.Fill("turret-hole", ("hole", PaperFormat.Number(hole + 1)), ("lens", lens.Value))
            )
        );
}
