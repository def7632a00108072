namespace Spoolbook;

/// <summary>The papers on the disk.</summary>
/// <param name="Folder">Where they lie.</param>
/// <param name="Files">What became of each.</param>
internal sealed record WrittenPapers(string Folder, IReadOnlyList<(string Name, WriteResult What)> Files)
{
    /// <summary>What became of a person's own files there, each in a sentence.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}
