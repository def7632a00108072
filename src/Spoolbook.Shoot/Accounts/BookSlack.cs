using Spoolbook.Film;

namespace Spoolbook.Shoot.Accounts;

/// <summary>Lengths of film too small to keep books on. A production's tolerances may set others.</summary>
public sealed record BookSlack
{
    /// <summary>The house's lengths.</summary>
    public static BookSlack Usual { get; } = new();

    /// <summary>Film left at the end of a roll that is no short end where nobody mentions it: the tolerance <c>gap-slack</c>.</summary>
    public Footage Leftover { get; init; } = new(80);

    /// <summary>
    /// Film by which a roll may differ from the short end that it was cut from: the tolerance <c>short-end-slack</c>. It
    /// was measured again; more is a piece of its own.
    /// </summary>
    public Footage ShortEnd { get; init; } = new(240);
}
