using System.Collections.Immutable;
using Spoolbook.Reading.Files;

namespace Spoolbook.Checks.Tests.Pages;

/// <summary>The files of the sample production, read once.</summary>
static class SampleText
{
    /// <summary>Their text, by their path from the production's folder.</summary>
    public static ImmutableSortedDictionary<string, string> Files { get; } =
        Directory
            .EnumerateFiles(Repository.Sample, "*.yaml", SearchOption.AllDirectories)
            .ToImmutableSortedDictionary(
                file => Path.GetRelativePath(Repository.Sample, file).Replace('\\', '/'),
                file => File.ReadAllText(file).ReplaceLineEndings("\n"),
                StringComparer.Ordinal
            );

    /// <summary>The pictures of the sample, added to a test's files.</summary>
    public static TextFiles WithPictures(this TextFiles files) =>
        Directory
            .EnumerateFiles(Repository.Sample, "*.svg")
            .Aggregate(files, (all, picture) => all.With(Path.GetFileName(picture), File.ReadAllBytes(picture)));
}
