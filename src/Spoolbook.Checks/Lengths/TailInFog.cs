using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Lengths;

static class TailInFog
{
    public static readonly RollCheck Check = new("length/tail-in-fog", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) => LostInTake.Look(
        Check,
        context,
        book,
        WasteCause.Tail,
        how: "lies on the tail, which saw light when the roll was taken out",
        help: "Mark it as no good, or shoot it again. Run a few feet off with the lens capped after the last take.");
}
