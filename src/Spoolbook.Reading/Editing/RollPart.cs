namespace Spoolbook.Reading.Editing;

/// <summary>A part of a roll that has keys of its own.</summary>
public enum RollPart
{
    /// <summary>The roll itself: its lot, its body.</summary>
    Roll,

    Load,

    Unload,

    /// <summary>The boxes at the foot of the paper sheet.</summary>
    Totals,
}
