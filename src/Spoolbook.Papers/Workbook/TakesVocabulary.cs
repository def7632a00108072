using System.Collections.Immutable;
using Spoolbook.Papers.Ledger;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Workbook;

/// <summary>How the sheet of takes names things, for whoever reads it back.</summary>
public static class TakesVocabulary
{
    /// <summary>What the sheet is called.</summary>
    public const string Sheet = "Takes";

    /// <summary>The heads of its columns, in the order of the columns.</summary>
    public static ImmutableArray<string> Heads { get; } =
    [
        "Roll", "Day", "Scene", "Shot", "Take", "Mark", "Pass", "From frame", "To frame", "Frames", "From", "To", "Length", "Screen time",
        "Speed", "Lens", "Stop", "Filter", "Body", "Remarks", "Scene and shot", "New shot",
    ];

    /// <summary>How it writes what is said of a take.</summary>
    public static ImmutableArray<(Mark Mark, string Code)> Marks { get; } = [.. Enum.GetValues<Mark>().Select(m => (m, Codes.Of(m)))];
}
