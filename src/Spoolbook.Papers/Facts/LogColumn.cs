using System.Collections.Immutable;
using Spoolbook.Papers.Wording;

namespace Spoolbook.Papers.Facts;

/// <summary>A column of the log, which the camera report fills and the log sheet leaves to a hand.</summary>
/// <param name="Head">What stands over it.</param>
/// <param name="Look">How the report sets it, in classes of the vocabulary.</param>
/// <param name="BlankWidth">Its width on the log sheet; empty where it takes the rest.</param>
public sealed record LogColumn(string Head, string Look, string BlankWidth)
{
    const string Figure = "num nowrap",
        Word = "nowrap",
        Rest = "rest";

    /// <summary>The columns in their order: the number of the line first, what else there is to say of it last.</summary>
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
