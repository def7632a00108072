namespace Spoolbook.Papers.WrapSummaries;

/// <summary>How much of the rolls' strips a paper shows.</summary>
internal enum StripSize
{
    /// <summary>Nothing: there are too many.</summary>
    None,

    /// <summary>Low strips without room for every label: the camera reports have them all.</summary>
    Low,

    /// <summary>Strips with every label.</summary>
    Whole,
}
