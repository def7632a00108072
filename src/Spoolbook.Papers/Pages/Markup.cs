namespace Spoolbook.Papers.Pages;

/// <summary>XHTML or SVG from our own code, which a template prints unescaped. Everything else that a template prints is escaped.</summary>
public sealed record Markup(string Xml);
