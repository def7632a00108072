namespace Spoolbook.Papers.Pages;

/// <summary>A parameter of a function that a template may call, as the engine's messages name it.</summary>
sealed record TemplateParameter(string Name, Type Kind);
