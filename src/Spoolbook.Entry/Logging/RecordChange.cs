namespace Spoolbook.Entry.Logging;

/// <summary>What a line changes in the record.</summary>
/// <param name="Roll">The roll it is about; null for a day.</param>
/// <param name="File">The file before and after; null where nothing changes or the line is refused.</param>
public sealed record RecordChange(LineDeed Deed, string? Roll, ChangedFile? File)
{
    /// <summary>Why it cannot be written; null where it can.</summary>
    public Objection? Refused { get; init; }

    /// <summary>The amended or struck entry: a take's slate, or another entry's word; null for none.</summary>
    public string? Entry { get; init; }

    /// <summary>The remark that is amended, so that none goes without a word; null where it stays.</summary>
    public ChangedRemark? Remark { get; init; }

    /// <summary>The date that the entry got because the day of the line is another than the roll's.</summary>
    public DateOnly? Dated { get; init; }

    internal static RecordChange Not(string? roll, string where, string message, string help) =>
        new(LineDeed.Nothing, roll, null) { Refused = new Objection(where, message, help) };
}
