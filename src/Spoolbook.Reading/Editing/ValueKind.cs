namespace Spoolbook.Reading.Editing;

/// <summary>What kind of value a key of an entry has, as far as whoever writes one must know.</summary>
public enum ValueKind
{
    /// <summary>A number, a part, a duration: whatever has no kind of its own here.</summary>
    Other,

    /// <summary>Free text or a name.</summary>
    Text,

    /// <summary>A position on the film, or a length of it.</summary>
    Length,

    /// <summary>A length of film that is counted in frames.</summary>
    Frames,

    /// <summary>A camera speed.</summary>
    Speed,

    /// <summary>A stop on the lens.</summary>
    Stop,

    /// <summary>A distance to the subject.</summary>
    Distance,

    /// <summary>A day.</summary>
    Date,

    /// <summary>A day and a time.</summary>
    Moment,

    /// <summary>A time of day.</summary>
    Clock,

    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>A word out of a list.</summary>
    Choice,
}
