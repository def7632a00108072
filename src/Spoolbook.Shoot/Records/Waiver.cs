namespace Spoolbook.Shoot.Records;

/// <summary>
/// A rule broken on purpose, with its reason. Turns a finding off and is printed on the papers. It covers what
/// lies in every place that it names; where it names none, the whole roll or production that it stands in.
/// </summary>
public sealed record Waiver(Place Place)
{
    /// <summary>The check's name, <c>group/what</c>.</summary>
    public required Located<string> Check { get; init; }

    /// <summary>The take it is about, as its slate <c>7B/1</c>.</summary>
    public Located<string>? Take { get; init; }

    /// <summary>The shot it is about, scene and letter together: <c>2C</c>; every take of it too.</summary>
    public Located<string>? Shot { get; init; }

    /// <summary>The roll it is about, where it stands among the production's.</summary>
    public Located<string>? Roll { get; init; }

    /// <summary>The lot of raw stock it is about; every roll of it too.</summary>
    public Located<string>? Lot { get; init; }

    /// <summary>The piece of the kit it is about, by its name there.</summary>
    public Located<string>? Piece { get; init; }

    /// <summary>Why; null where nobody wrote it, which is an error of its own.</summary>
    public Located<string>? Reason { get; init; }

    /// <summary>Who answers for it, by a person's id.</summary>
    public Located<string>? By { get; init; }
}
