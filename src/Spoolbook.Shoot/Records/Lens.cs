using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>A lens.</summary>
public sealed record Lens(Place Place)
{
    /// <summary>Its name in the log: <c>25mm</c>.</summary>
    public required Located<string> Name { get; init; }

    /// <summary>A description.</summary>
    public Located<string>? What { get; init; }

    /// <summary>Its serial number.</summary>
    public Located<string>? Serial { get; init; }

    /// <summary>Focal length in millimetres.</summary>
    public Located<Ratio>? Focal { get; init; }

    /// <summary>The widest stop on its ring.</summary>
    public Located<Stop>? Widest { get; init; }

    /// <summary>The smallest stop on its ring.</summary>
    public Located<Stop>? Smallest { get; init; }

    /// <summary>Its closest focus, from the film plane.</summary>
    public Located<Distance>? Nearest { get; init; }

    /// <summary>Whether it was made for a prism behind it or for air; null where it is not written.</summary>
    public Located<LensMadeFor>? MadeFor { get; init; }

    /// <summary>Whether it came back.</summary>
    public Returned Returned { get; init; } = new(1, null, null);
}
