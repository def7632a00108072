using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>What is in which camera at the end of everything written down.</summary>
/// <param name="Cameras">The bodies of the kit in its order, then rolls in cameras that the kit does not name.</param>
public sealed record CameraBook(ImmutableArray<CameraFilm> Cameras)
{
    /// <summary>The cameras of a shoot.</summary>
    internal static CameraBook Keep(ShootBook book, KitBook kit)
    {
        var bodies = kit.Pieces.Where(p => p.Kind == KitKind.Body).ToList();
        var known = bodies.Select(b => b.Name.Value).ToHashSet(StringComparer.Ordinal);
        return new CameraBook([
            .. bodies.Select(b => new CameraFilm(b.Name.Value, b.FilmIn, BookOf(book, b.FilmIn))),
            .. book
                .Rolls.Where(r => r.Roll.Unload is null && (r.Walk.End.Body is not { } body || !known.Contains(body)))
                .Select(r => new CameraFilm(r.Walk.End.Body, r.Roll, r)),
        ]);
    }

    static RollBook? BookOf(ShootBook book, Roll? roll) =>
        roll is null ? null : book.Rolls.FirstOrDefault(r => ReferenceEquals(r.Roll, roll));
}
