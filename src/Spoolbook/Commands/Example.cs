namespace Spoolbook.Commands;

/// <summary>A command line to copy.</summary>
/// <param name="Line">What to type after <c>spoolbook</c>.</param>
/// <param name="About">What it does.</param>
internal readonly record struct Example(string Line, string About);
