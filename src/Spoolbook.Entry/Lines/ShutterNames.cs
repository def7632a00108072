using System.Collections.Immutable;

namespace Spoolbook.Entry.Lines;

/// <summary>A body with the names of its shutter's marks.</summary>
public sealed record ShutterNames(string Body, ImmutableArray<string> Marks);
