using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Lengths;

static class TailInFog
{
    public static readonly RollCheck Check = new("length/tail-in-fog", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) =>
        LostInTake.Look(
            Check,
            context,
            book,
            WasteCause.Tail,
            says: "length/tail-in-fog.message",
            help: Sentence.Of("length/tail-in-fog.help")
        );
}
