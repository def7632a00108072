using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>A camera body.</summary>
public sealed record Body(Place Place)
{
    /// <summary>Its name in the log: <c>B1</c>.</summary>
    public required Located<string> Name { get; init; }

    /// <summary>A description.</summary>
    public Located<string>? What { get; init; }

    /// <summary>Its serial number.</summary>
    public Located<string>? Serial { get; init; }

    /// <summary>The speeds engraved on its dial.</summary>
    public ImmutableArray<Located<Speed>> Speeds { get; init; } = [];

    /// <summary>The slowest speed that it can be set to; by default the lowest engraved.</summary>
    public Located<Speed>? Slowest { get; init; }

    /// <summary>The fastest speed that it can be set to; by default the highest engraved.</summary>
    public Located<Speed>? Fastest { get; init; }

    /// <summary>Shutter angle fully open, in degrees.</summary>
    public Located<Ratio>? ShutterAngle { get; init; }

    /// <summary>The variable shutter's marks, from open to closed.</summary>
    public ImmutableArray<ShutterMark> ShutterMarks { get; init; } = [];

    /// <summary>The part of the light that goes to the finder: 0.2 for 20 %.</summary>
    public Located<Ratio>? FinderLoss { get; init; }

    /// <summary>Film that a full wind of the spring drives, the same at any speed; null for a body without a spring.</summary>
    public Located<Footage>? FullWind { get; init; }

    /// <summary>How its spring was left when it was put away; null where nobody wrote it down.</summary>
    public Located<SpringLeft>? Spring { get; init; }

    /// <summary>The speed that it is loaded at.</summary>
    public Located<Speed>? LoadingSpeed { get; init; }

    /// <summary>
    /// Frames after which its frame counter reads zero again; null for a counter that never does, or where it is not
    /// written.
    /// </summary>
    public Located<long>? CounterWraps { get; init; }

    /// <summary>Rows of perforations that its sprockets and claw work in, 1 or 2; null where it is not written.</summary>
    public Located<int>? Sprockets { get; init; }

    /// <summary>The winding of single-perforated film that it takes; null where it is not written.</summary>
    public Located<FilmWinding>? Winding { get; init; }

    /// <summary>
    /// Whether a prism behind the lens takes light to its finder: a mirror takes none while film is exposed. Null where
    /// nothing says what the finder takes.
    /// </summary>
    public bool? HasPrism => FinderLoss is { } loss ? loss.Value.Sign > 0 : null;

    /// <summary>The lenses on its turret, hole by hole; empty where nothing is written.</summary>
    public ImmutableArray<Located<string>> Turret { get; init; } = [];

    /// <summary>The longest film that it takes.</summary>
    public Located<Footage>? Takes { get; init; }

    /// <summary>Whether it came back.</summary>
    public Returned Returned { get; init; } = new(1, null, null);

    /// <summary>The shutter mark of that name, or null.</summary>
    public ShutterMark? MarkNamed(string name) => ShutterMarks.FirstOrDefault(m => m.Name.Value == name);
}
