namespace Spoolbook.Entry.Logging;

/// <summary>What a line did to the record.</summary>
public enum LineDeed
{
    /// <summary>It is an entry now.</summary>
    Added,

    /// <summary>An entry says something else.</summary>
    Amended,

    /// <summary>An entry is gone.</summary>
    Struck,

    /// <summary>It was in the record already, or is not there to be struck.</summary>
    Nothing,

    /// <summary>It says the date of the lines that follow.</summary>
    Dated,
}
