using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>A line of the kit list: one thing, or several alike.</summary>
public sealed record KitPiece(KitKind Kind, Located<string> Name, Located<string>? What, Located<string>? Serial, Returned Returned)
{
    /// <summary>The roll that is still in it; null for anything but a body with film in.</summary>
    public Roll? FilmIn { get; init; }

    /// <summary>Whether it is driven by a spring.</summary>
    public bool HasSpring { get; init; }

    /// <summary>How its spring was left; null where nobody said, and for what has none.</summary>
    public SpringLeft? SpringLeft { get; init; }

    /// <summary>Whether it is the empty spools that rolls are wound on to.</summary>
    public bool TakeUp { get; init; }
}
