namespace Spoolbook.Papers.Jobs;

/// <summary>Where the index links to a paper.</summary>
internal enum LinkPlace
{
    /// <summary>Among the papers that there is one of, or one for each consignment and body.</summary>
    Papers,

    /// <summary>Among the camera reports, each called by its roll.</summary>
    Reports,

    Nowhere,
}
