namespace Spoolbook;

/// <summary>How far a production got.</summary>
internal enum PipelineEnd
{
    /// <summary>Checked only, as asked.</summary>
    Checked,

    /// <summary>Its errors keep papers from being written.</summary>
    Errors,

    /// <summary>A paper could not be printed.</summary>
    NotPrinted,

    /// <summary>Papers were written.</summary>
    Written,
}
