using System.Collections.Immutable;

namespace Spoolbook.Shoot.Findings;

/// <summary>The order in which findings are listed: by file and place, then by check, then by what they say.</summary>
public static class FindingOrder
{
    static readonly Comparer<Finding> _byPlace = Comparer<Finding>.Create(Compare);

    /// <summary>Some findings in that order; of two that are alike, the first stays first.</summary>
    /// <param name="findings">The findings.</param>
    public static ImmutableArray<Finding> Sort(IEnumerable<Finding> findings) => [.. findings.Order(_byPlace)];

    // What a finding says is put together only where two are of one check at one place.
    static int Compare(Finding one, Finding other) =>
        string.CompareOrdinal(one.Place.File, other.Place.File) is not 0 and var file ? file
        : (one.Place.Line, one.Place.Column).CompareTo((other.Place.Line, other.Place.Column)) is not 0 and var place ? place
        : string.CompareOrdinal(one.Check, other.Check) is not 0 and var check ? check
        : string.CompareOrdinal(one.Message, other.Message);
}
