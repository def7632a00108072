using Spoolbook.Film;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Shoot.Accounts;

/// <summary>A take and its roll.</summary>
public sealed record CoveredTake(RollBook Roll, Layer Layer)
{
    /// <summary>Film of it that the account has as good: neither lost, nor under a take that is not good.</summary>
    public Footage GoodFilm { get; } = Roll.Strip.GoodFilmOf(Layer);

    /// <summary>Whether it is marked good, and good film is left of it.</summary>
    public bool IsGood => Layer.Take.Mark.Value == Mark.Good && GoodFilm > Footage.Zero;
}
