using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Kits;

static class LensNotInKit
{
    public static readonly RecordCheck Check = new("kit/lens-not-in-kit", Level.Error, Look);

    static IEnumerable<Finding> Look(Context context)
    {
        var names = context.Production.Lenses.Select(l => l.Name.Value).ToHashSet(StringComparer.Ordinal);

        // No lens listed: nobody keeps the list, and not every take is wrong.
        return from roll in context.Production.Rolls
               where names.Count > 0
               from take in roll.Takes
               let lens = take.Lens
               where lens is not null && !names.Contains(lens.Value)
               select Check.At(
                   roll,
                   take,
                   lens.Place,
                   Sentence.Of("kit/lens-not-in-kit.message", ("take", take.Slate), ("lens", lens.Value))
               ) with
               {
                   Others = [new(context.Production.Lenses[0].Place, Sentence.Of("kit/lens-not-in-kit.other.the-kit-s-lenses-start-here"))],
                   Figures = [new(Sentence.Of("kit/lens-not-in-kit.figure.in-the-kit"), string.Join(", ", names))],
                   Advice = Likeness.Nearest(lens.Value, names) is { } near
                       ? Sentence.Of("common.did-you-mean", ("near", near))
                       : Sentence.Of("kit/lens-not-in-kit.help", ("lens", lens.Value)),
               };
    }
}
