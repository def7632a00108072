namespace Spoolbook;

/// <summary>What happened to a file that was written.</summary>
internal enum WriteResult
{
    /// <summary>A new file.</summary>
    New,

    /// <summary>The file had other contents.</summary>
    Changed,

    /// <summary>The file was the same already.</summary>
    Same,

    /// <summary>It was there, and is no longer made.</summary>
    Removed,
}
