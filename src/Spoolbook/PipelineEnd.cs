namespace Spoolbook;

/// <summary>How far a production came.</summary>
internal enum PipelineEnd
{
    /// <summary>It was checked, and no more was asked for.</summary>
    Checked,

    /// <summary>Its errors keep papers from being written.</summary>
    Errors,

    /// <summary>Some paper could not be printed.</summary>
    NotPrinted,

    /// <summary>Its papers were written.</summary>
    Written,
}
