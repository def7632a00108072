namespace Spoolbook.Film;

/// <summary>The two pitches that stock is perforated to.</summary>
public enum PitchKind
{
    /// <summary>Long pitch: print stock, and camera stock for the cameras that need it.</summary>
    LongPitch,

    /// <summary>Short pitch, about 2 per mille less: negative that is contact printed, wound against the print.</summary>
    ShortPitch,
}
