using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Focusing;

static class NearerThanLens
{
    public static readonly RecordCheck Check = new("focus/nearer-than-lens", Level.Warning, Look);

    // A tape is read to a finger's breadth, two in a hundred of a yard.
    static bool IsNearer(Distance focus, Distance nearest) => !focus.IsInfinity && focus.Millimetres * 102 < nearest.Millimetres * 100;

    static IEnumerable<Finding> Look(Context context) =>
        from roll in context.Production.Rolls
        from take in roll.Takes
        let nearest = context.Production.LensNamed(take.Lens?.Value)?.Nearest
        where take.Focus is not null && nearest is not null && IsNearer(take.Focus.Value, nearest.Value)
        select Check.At(roll, take, take.Focus!.Place, $"Take {take.Slate} is focused at {context.Write(take.Focus.Value)}, and the lens {take.Lens!.Value} goes no nearer than {context.Write(nearest.Value)}") with
        {
            Others = [new(nearest.Place, "the nearest that it focuses")],
            Help = "A distance counts from the film plane mark, not from the front of the lens: if this one does not, correct it. If tubes or a close-up lens were on, accept it with that reason. If neither, the picture is soft: shoot it again from further away.",
        };
}
