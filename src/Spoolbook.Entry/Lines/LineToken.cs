using System.Collections.Immutable;
using Spoolbook.Reading.Editing;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Entry.Lines;

/// <summary>A word, or several, that could be read.</summary>
/// <param name="Next">The first word after it.</param>
/// <param name="Keys">What it says.</param>
sealed record LineToken(int Next, ImmutableArray<KeyValue> Keys)
{
    public LineToken(int next, string key, string value)
        : this(next, [new KeyValue(key, value)]) { }

    /// <summary>The key that it says was not noted.</summary>
    public string? NotNoted { get; init; }

    /// <summary>The date of when it happened.</summary>
    public string? Date { get; init; }

    /// <summary>The time of when it happened.</summary>
    public string? Clock { get; init; }

    /// <summary>Whether everything after it is the remark.</summary>
    public bool BeginsRemark { get; init; }

    /// <summary>Why it cannot be taken although it can be read.</summary>
    public Finding? Fault { get; init; }
}
