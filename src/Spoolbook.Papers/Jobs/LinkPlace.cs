namespace Spoolbook.Papers.Jobs;

/// <summary>Where the index links to a paper.</summary>
internal enum LinkPlace
{
    /// <summary>Among the papers of which there is one, or one for each consignment and body.</summary>
    Papers,

    /// <summary>Among the camera reports, under the roll's name.</summary>
    Reports,

    Nowhere,
}
