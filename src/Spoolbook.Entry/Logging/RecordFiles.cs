using System.Collections.Immutable;

namespace Spoolbook.Entry.Logging;

/// <summary>The files of a production that lines are written into.</summary>
/// <param name="Names">Their names.</param>
/// <param name="IsOneFile">Whether everything is in one.</param>
/// <param name="HasSchemas">Whether the folder has schemas for an editor.</param>
/// <param name="TextOf">The text of one of them; null where it cannot be read.</param>
public sealed record RecordFiles(ImmutableArray<string> Names, bool IsOneFile, bool HasSchemas, Func<string, string?> TextOf);
