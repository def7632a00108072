namespace Spoolbook.Shoot.Records;

/// <summary>How single-perforated film is wound, emulsion in: on which side its perforations are as it comes off the roll.</summary>
public enum FilmWinding
{
    /// <summary>For contact printing.</summary>
    A,

    /// <summary>For cameras (from memory).</summary>
    B,
}
