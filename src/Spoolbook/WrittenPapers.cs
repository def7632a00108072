namespace Spoolbook;

/// <summary>The papers on the disk.</summary>
/// <param name="Folder">Their folder.</param>
/// <param name="Files">What happened to each.</param>
internal sealed record WrittenPapers(string Folder, IReadOnlyList<(string Name, WriteResult What)> Files);
