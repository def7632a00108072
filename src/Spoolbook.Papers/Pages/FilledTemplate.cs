namespace Spoolbook.Papers.Pages;

/// <summary>What a template printed, not yet read as a page.</summary>
/// <param name="Text">All of it; nothing where the template has a fault.</param>
/// <param name="Read">Reads it: the page, or what is wrong.</param>
sealed record FilledTemplate(string Text, Func<PageResult> Read);
