namespace Spoolbook.Entry.Lines;

/// <summary>What happened, by the first word of a line.</summary>
public enum LineVerb
{
    /// <summary>Film ran with the shutter working.</summary>
    Take,

    /// <summary>The spring was wound.</summary>
    Wind,

    /// <summary>Film was wound back for another pass.</summary>
    Rewind,

    /// <summary>Film ran without a picture.</summary>
    RunOff,

    /// <summary>The door was opened in the light.</summary>
    Fog,

    /// <summary>A half-shot roll was unloaded and rethreaded.</summary>
    Reload,

    /// <summary>Something to remember.</summary>
    Note,

    /// <summary>A roll went into a camera.</summary>
    Load,

    /// <summary>A roll came out.</summary>
    Unload,

    /// <summary>Changes keys of an entry that is in the log.</summary>
    Amend,

    /// <summary>Takes an entry out of the log.</summary>
    Strike,

    /// <summary>The date of the lines that follow; never written to the record.</summary>
    Day,
}
