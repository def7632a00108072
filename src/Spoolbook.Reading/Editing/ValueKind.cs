namespace Spoolbook.Reading.Editing;

/// <summary>The kind of value a key takes, as far as code that writes one must know.</summary>
public enum ValueKind
{
    /// <summary>Whatever has no kind of its own here: a number, a part, a duration.</summary>
    Other,

    Text,

    /// <summary>A position on the film, or a length of it.</summary>
    Length,

    /// <summary>A length of film that people count in frames.</summary>
    Frames,

    Speed,

    Stop,

    /// <summary>A distance to the subject.</summary>
    Distance,

    Date,

    /// <summary>A day and a time.</summary>
    Moment,

    /// <summary>A time of day.</summary>
    Clock,

    YesNo,

    /// <summary>A word from a list.</summary>
    Choice,
}
