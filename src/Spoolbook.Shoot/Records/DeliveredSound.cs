namespace Spoolbook.Shoot.Records;

/// <summary>What becomes of the sound.</summary>
public enum DeliveredSound
{
    /// <summary>There is none: the files are mute.</summary>
    None,

    /// <summary>It goes to the editor apart from the picture.</summary>
    Apart,

    /// <summary>The lab lays it in sync.</summary>
    Synced,
}
