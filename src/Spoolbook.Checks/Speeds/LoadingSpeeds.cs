using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Speeds;

/// <summary>Cameras that were not reset after loading.</summary>
static class LoadingSpeeds
{
    /// <summary>
    /// The loading speed of a roll's body, where the sheet says that the camera was left at it. Null where it was
    /// reset, or is the projection speed.
    /// </summary>
    public static Located<Speed>? LeftAt(Context context, Roll roll)
    {
        var loading = context.Production.BodyNamed(roll.Body?.Value)?.LoadingSpeed;
        var after = roll.Load.SpeedAfter;
        return !roll.IsPractice && loading is not null && after?.Value == loading.Value && loading.Value != context.Production.ProjectedAt
            ? loading
            : null;
    }
}
