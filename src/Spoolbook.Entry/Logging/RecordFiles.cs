using System.Collections.Immutable;

namespace Spoolbook.Entry.Logging;

/// <summary>The files of a production that lines go into.</summary>
/// <param name="IsOneFile">Whether one file holds everything.</param>
/// <param name="HasSchemas">Whether the folder has schemas for an editor.</param>
/// <param name="TextOf">The text of one of the files; null where it cannot be read.</param>
public sealed record RecordFiles(ImmutableArray<string> Names, bool IsOneFile, bool HasSchemas, Func<string, string?> TextOf);
