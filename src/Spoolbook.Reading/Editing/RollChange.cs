namespace Spoolbook.Reading.Editing;

/// <summary>One thing to change in a roll.</summary>
public abstract record RollChange;
