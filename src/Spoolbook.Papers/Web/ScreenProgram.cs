namespace Spoolbook.Papers.Web;

/// <summary>What makes a page work on a screen.</summary>
/// <param name="Name">The name of its style sheet and its script among the templates, without extension.</param>
/// <param name="Data">Gathers what the script knows of the production, as JSON safe inside a page.</param>
internal sealed record ScreenProgram(string Name, Func<string> Data);
