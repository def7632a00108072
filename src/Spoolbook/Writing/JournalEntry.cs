namespace Spoolbook.Writing;

/// <summary>A file that a journal puts in its place.</summary>
/// <param name="Name">Where it goes, from the folder, with forward slashes.</param>
/// <param name="Beside">The new file's name beside it until then; empty where the old one is taken away.</param>
/// <param name="Old">What is there before (<see cref="FileState"/>).</param>
/// <param name="New">What is there afterwards.</param>
/// <param name="Kept">The name under which the old one is kept; empty where there is none.</param>
internal sealed record JournalEntry(string Name, string Beside, string Old, string New, string Kept);
