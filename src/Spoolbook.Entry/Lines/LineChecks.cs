using System.Collections.Immutable;

namespace Spoolbook.Entry.Lines;

/// <summary>The names of the checks on lines. Each has its page among the checks.</summary>
public static class LineChecks
{
    /// <summary>A word that is neither a token nor a remark.</summary>
    public const string Unreadable = "line/unreadable";

    /// <summary>A word with more than one reading.</summary>
    public const string TwoReadings = "line/two-readings";

    /// <summary>A key said twice.</summary>
    public const string SaidTwice = "line/said-twice";

    /// <summary>A key that the line must say and does not.</summary>
    public const string Needs = "line/needs";

    public const string BadValue = "line/bad-value";

    public const string UnknownName = "line/unknown-name";

    public static ImmutableArray<string> All { get; } = [BadValue, Needs, SaidTwice, TwoReadings, UnknownName, Unreadable];
}
