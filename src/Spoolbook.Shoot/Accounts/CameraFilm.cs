using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>A camera body and the roll in it.</summary>
/// <param name="Body">The body's name; null for a roll that is in a camera which nobody named.</param>
/// <param name="Roll">The roll; null where the body is empty.</param>
/// <param name="Book">The roll's strip and account; null where it has none, or no roll is in.</param>
public sealed record CameraFilm(string? Body, Roll? Roll, RollBook? Book)
{
    /// <summary>Film on the roll that is not exposed or lost yet; null where nobody knows.</summary>
    public Footage? Left => Book?.Tally.ShortEnd;
}
