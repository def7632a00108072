using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Lengths;

static class FogInTake
{
    public static readonly RollCheck Check = new("length/fog-in-take", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        LostInTake.Look(
            Check,
            context,
            book,
            WasteCause.Fog,
            says: "length/fog-in-take.message",
            help: Sentence.Of("length/fog-in-take.help")
        );
}
