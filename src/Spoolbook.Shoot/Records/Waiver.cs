namespace Spoolbook.Shoot.Records;

/// <summary>
/// A rule broken intentionally, with its reason. Turns a finding off and is printed on the papers. It covers what is in
/// every place that it names; without a place, the whole roll or production that it is written in.
/// </summary>
public sealed record Waiver(Place Place)
{
    /// <summary>The check's name, <c>group/what</c>.</summary>
    public required Located<string> Check { get; init; }

    /// <summary>The take it is about, by its slate: <c>7B/1</c>.</summary>
    public Located<string>? Take { get; init; }

    /// <summary>The shot it is about, scene and letter together: <c>2C</c>. Covers every take of it.</summary>
    public Located<string>? Shot { get; init; }

    /// <summary>The roll it is about, in a production's waiver.</summary>
    public Located<string>? Roll { get; init; }

    /// <summary>The lot of raw stock it is about. Covers every roll of it.</summary>
    public Located<string>? Lot { get; init; }

    /// <summary>The piece of the kit it is about, by its name there.</summary>
    public Located<string>? Piece { get; init; }

    /// <summary>Why; null where it is not written, which is an error.</summary>
    public Located<string>? Reason { get; init; }

    /// <summary>Who is responsible, by a person's id.</summary>
    public Located<string>? By { get; init; }
}
