using System.Collections.Immutable;

namespace Spoolbook.Entry.Lines;

/// <summary>The names of what there is to say about lines. Each has its page among the checks.</summary>
public static class LineChecks
{
    /// <summary>A word that nobody can read, where something is said.</summary>
    public const string Unreadable = "line/unreadable";

    /// <summary>A word that can be read in more than one way.</summary>
    public const string TwoReadings = "line/two-readings";

    /// <summary>Something is said twice.</summary>
    public const string SaidTwice = "line/said-twice";

    /// <summary>Something is not said that must be.</summary>
    public const string Needs = "line/needs";

    /// <summary>A value that does not fit its key.</summary>
    public const string BadValue = "line/bad-value";

    /// <summary>A name that the production does not know.</summary>
    public const string UnknownName = "line/unknown-name";

    /// <summary>All of them.</summary>
    public static ImmutableArray<string> All { get; } = [BadValue, Needs, SaidTwice, TwoReadings, UnknownName, Unreadable];
}
