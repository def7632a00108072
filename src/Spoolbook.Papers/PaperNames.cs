using System.Collections.Immutable;
using Spoolbook.Papers.WrapSummaries;

namespace Spoolbook.Papers;

/// <summary>The names that papers are asked for by: a kind, or one paper of it, as its file is called without the ending.</summary>
public static class PaperNames
{
    /// <summary>The kind of which each roll has one.</summary>
    public const string CameraReport = "camera-report";

    /// <summary>Every kind, in the order of the index.</summary>
    public static ImmutableArray<string> Kinds { get; } =
    [
        CameraReport,
        "lab-order",
        "can-labels",
        WrapSummaryPaper.Name,
        "kit-list",
        "log-sheets",
        "pocket-log",
        "learner-sheets",
        "exposure-card",
        "index",
        PaperList.Workbook,
        PaperList.Takes,
        PaperList.Ledger,
    ];

    /// <summary>Whether a paper is one of those asked for; each is where nothing is asked for.</summary>
    /// <param name="name">The paper's name without its ending: <c>camera-report-R01</c>.</param>
    public static bool IsAmong(ImmutableArray<string> asked, string name) => asked.IsEmpty || asked.Any(a => Means(a, name));

    /// <summary>Whether a name that was typed means a paper: its own name, or its kind's.</summary>
    public static bool Means(string asked, string name) => name == asked || name.StartsWith(asked + "-", StringComparison.Ordinal);
}
