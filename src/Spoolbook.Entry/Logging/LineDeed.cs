namespace Spoolbook.Entry.Logging;

/// <summary>What a line did to the record.</summary>
public enum LineDeed
{
    /// <summary>Added an entry.</summary>
    Added,

    /// <summary>Changed an entry.</summary>
    Amended,

    /// <summary>Took an entry out.</summary>
    Struck,

    /// <summary>Nothing: the record already has it, or has nothing to strike.</summary>
    Nothing,

    /// <summary>Set the date of the lines after it.</summary>
    Dated,
}
