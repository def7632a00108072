namespace Spoolbook.Reading.Editing;

/// <summary>One thing to change in a roll's log.</summary>
public abstract record LogChange;
