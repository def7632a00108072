using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Film.Lenses;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Focusing;

/// <summary>What was sharp in a take.</summary>
static class Depth
{
    /// <summary>
    /// The depth of field of a take, for the gauge's usual circle of confusion. Null where a figure is missing, such as
    /// a zoom's focal length, or the focus is closer than a thin lens can be set.
    /// </summary>
    public static DepthOfField? Of(Context context, Take take)
    {
        if (take is not { Focus: { } focus, Stop: { } stop } || context.Production.LensNamed(take.Lens?.Value)?.Focal is not { } focal)
        {
            return null;
        }

        var length = focal.Value.ToDouble();
        var distance = Millimetres(focus.Value);
        return distance < 4 * length
            ? null
            : DepthOfField.Of(length, stop.Value.EngravedNumber, context.Production.Gauge.CircleOfConfusion, distance);
    }

    /// <summary>A distance in millimetres; infinity is beyond all.</summary>
    public static double Millimetres(Distance distance) => distance.IsInfinity ? double.PositiveInfinity : distance.Millimetres.ToDouble();
}
