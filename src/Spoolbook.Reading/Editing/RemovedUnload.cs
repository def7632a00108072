namespace Spoolbook.Reading.Editing;

/// <summary>The unloading that is taken out of a roll: it is in the camera again.</summary>
public sealed record RemovedUnload : RollChange;
