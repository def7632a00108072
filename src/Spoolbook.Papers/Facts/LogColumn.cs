using System.Collections.Immutable;
using Spoolbook.Papers.Wording;

namespace Spoolbook.Papers.Facts;

/// <summary>A column of the log, filled on the camera report and blank on the log sheet.</summary>
/// <param name="Head">Its heading.</param>
/// <param name="Look">Its classes of the vocabulary on the report.</param>
/// <param name="BlankWidth">Its width on the log sheet; empty where it takes the rest.</param>
public sealed record LogColumn(string Head, string Look, string BlankWidth)
{
    const string Figure = "num nowrap",
        Word = "nowrap",
        Rest = "rest";

    /// <summary>The columns in order: the number of the line first, the remarks last.</summary>
    internal static ImmutableArray<LogColumn> All(Translations words) =>
        [
            new(words["number"], Figure, "7mm"),
            new(words["slate"], Word, "17mm"),
            new(words["from"], Figure, "15mm"),
            new(words["to"], Figure, "15mm"),
            new(words["length"], Figure, "13mm"),
            new(words["seconds"], Figure, "10mm"),
            new(words["speed"], Figure, "9mm"),
            new(words["lens"], Word, "14mm"),
            new(words["stop"], Figure, "13mm"),
            new(words["filter"], Word, "13mm"),
            new(words["focus"], Figure, "13mm"),
            new(words["mark"], Word, "10mm"),
            new(words["remarks"], Rest, ""),
        ];
}
