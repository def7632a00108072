namespace Spoolbook;

/// <summary>What became of one file that was to be written.</summary>
internal enum WriteResult
{
    /// <summary>It was not there before.</summary>
    New,

    /// <summary>It was there, with other contents.</summary>
    Changed,

    /// <summary>It was there, the same.</summary>
    Same,

    /// <summary>It was there, and is no longer made.</summary>
    Removed,
}
