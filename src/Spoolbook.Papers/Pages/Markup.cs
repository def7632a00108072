namespace Spoolbook.Papers.Pages;

/// <summary>
/// XHTML or SVG made by our own code, printed by a template as it stands. Everything else that a template prints is escaped.
/// </summary>
public sealed record Markup(string Xml);
