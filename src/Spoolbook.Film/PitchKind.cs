namespace Spoolbook.Film;

/// <summary>Which of the two pitches a stock is perforated to.</summary>
public enum PitchKind
{
    /// <summary>Long pitch: print stock, and camera stock for cameras that ask for it.</summary>
    LongPitch,

    /// <summary>Short pitch, about 2 per mille less: negative that will be printed wound against the print.</summary>
    ShortPitch,
}
