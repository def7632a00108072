using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Accounts;

/// <summary>A line of the kit list: one thing, or several alike.</summary>
public sealed record KitPiece(KitKind Kind, Located<string> Name, Located<string>? What, Located<string>? Serial, Returned Returned)
{
    /// <summary>The roll still in it; null for anything but a body with film in.</summary>
    public Roll? FilmIn { get; init; }

    /// <summary>Whether a lens was made for a prism or for air; null where it is not written, and for anything else.</summary>
    public LensMadeFor? MadeFor { get; init; }

    /// <summary>The school's loan that it is on; null for what the school did not lend.</summary>
    public KitLoan? SchoolLoan { get; init; }

    /// <summary>The lenses on a body's turret, by name and hole by hole; empty where nothing is written, and for anything else.</summary>
    public ImmutableArray<string> Turret { get; init; } = [];

    /// <summary>Rows of perforations that a body's sprockets work in; null where it is not written, and for anything else.</summary>
    public int? Sprockets { get; init; }

    /// <summary>Whether it has a spring.</summary>
    public bool HasSpring { get; init; }

    /// <summary>How its spring was left; null where nobody wrote it down, and without a spring.</summary>
    public SpringLeft? SpringLeft { get; init; }

    /// <summary>Whether these are the empty take-up spools.</summary>
    public bool TakeUp { get; init; }
}
