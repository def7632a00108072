namespace Spoolbook.Reading.Editing;

/// <summary>Takes the unloading out of a roll: the roll is still in the camera.</summary>
public sealed record RemovedUnload : RollChange;
