using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Lengths;

static class FogInTake
{
    public static readonly RollCheck Check = new("length/fog-in-take", Level.Warning, Round.Strips, Look);

    static IEnumerable<Finding> Look(Context context, RollBook book) => LostInTake.Look(
        Check,
        context,
        book,
        WasteCause.Fog,
        how: "was fogged when the door was opened",
        help: "Mark it as no good, or shoot it again. If what is left of it will do, accept it with that reason; the lab order tells the lab where to expect fog.");
}
