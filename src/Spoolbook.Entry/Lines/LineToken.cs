using System.Collections.Immutable;
using Spoolbook.Reading.Editing;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Entry.Lines;

/// <summary>One word or several that could be read.</summary>
/// <param name="Next">The index of the first word after it.</param>
sealed record LineToken(int Next, ImmutableArray<KeyValue> Keys)
{
    public LineToken(int next, string key, string value)
        : this(next, [new KeyValue(key, value)]) { }

    /// <summary>A key that was not noted: <c>lens -</c>.</summary>
    public string? NotNoted { get; init; }

    /// <summary>The date it happened on.</summary>
    public string? Date { get; init; }

    /// <summary>The time it happened at.</summary>
    public string? Clock { get; init; }

    /// <summary>Whether everything after it is the remark.</summary>
    public bool BeginsRemark { get; init; }

    /// <summary>Why it is refused although it can be read.</summary>
    public Finding? Fault { get; init; }
}
