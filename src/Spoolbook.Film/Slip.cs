namespace Spoolbook.Film;

/// <summary>A slip of the pen: what a person wrote that could not be read, for whoever puts it into words.</summary>
/// <param name="Fault">What is wrong: a member of one of the enumerations of faults, such as <see cref="FilmLengthFault"/>.</param>
/// <param name="Text">What was written; empty where nothing was, or where figures do not go together.</param>
public sealed record Slip(Enum Fault, string Text)
{
    /// <summary>The gauge that a length was read in; null where it does not matter.</summary>
    public Gauge? Gauge { get; init; }

    /// <summary>What was to be measured; null for what is written in a way of its own.</summary>
    public MeasureKind? Measure { get; init; }
}
