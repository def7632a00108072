using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Checks.Kits;

static class LensNotInKit
{
    public static readonly RecordCheck Check = new("kit/lens-not-in-kit", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context)
    {
        var names = context.Production.Lenses.Select(l => l.Name.Value).ToHashSet(StringComparer.Ordinal);

        // No lens listed is a kit list that nobody keeps, and not a mistake in every take.
        return from roll in context.Production.Rolls
               where names.Count > 0
               from take in roll.Takes
               let lens = take.Lens
               where lens is not null && !names.Contains(lens.Value)
               select Check.At(roll, take, lens.Place, $"Take {take.Slate} was shot with the lens `{lens.Value}`, and the kit has no such lens") with
               {
                   Others = [new(context.Production.Lenses[0].Place, "the kit's lenses start here")],
                   Figures = [new("in the kit", string.Join(", ", names))],
                   Help = Likeness.Nearest(lens.Value, names) is { } near
                       ? $"Did you mean `{near}`?"
                       : $"Correct the name, or list the lens: `- {{lens: {lens.Value}, …}}`.",
               };
    }
}
