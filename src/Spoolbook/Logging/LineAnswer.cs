using System.Collections.Immutable;
using Spoolbook.Entry;
using Spoolbook.Entry.Lines;
using Spoolbook.Entry.Logging;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Logging;

/// <summary>What came of a line.</summary>
internal sealed record LineAnswer(LineText Text)
{
    /// <summary>What it says; null where it cannot be read.</summary>
    public SaidLine? Said { get; init; }

    /// <summary>Why it cannot be read; null where it can.</summary>
    public Finding? Unread { get; init; }

    /// <summary>What it changes; null where it cannot be read.</summary>
    public RecordChange? Change { get; init; }

    /// <summary>The findings that it brings.</summary>
    public ImmutableArray<Finding> Worse { get; init; } = [];

    /// <summary>Whether its new errors keep it out of the record.</summary>
    public bool IsAgainstTheRecord { get; init; }

    /// <summary>How far the roll is after it; null for a day, and where nothing changed.</summary>
    public RollInCamera? Roll { get; init; }

    /// <summary>The production after it.</summary>
    public Production? Production { get; init; }

    /// <summary>Why it cannot be written; null where it can.</summary>
    public Objection? Objection => Change?.Refused;

    /// <summary>Whether it is in the record, or nothing is to be done about it.</summary>
    public bool IsWell => Unread is null && Objection is null && !IsAgainstTheRecord;
}
