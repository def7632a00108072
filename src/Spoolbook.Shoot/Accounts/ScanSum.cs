using Spoolbook.Film;

namespace Spoolbook.Shoot.Accounts;

/// <summary>The files of some film.</summary>
/// <param name="Frames">Frames in them.</param>
/// <param name="Seconds">How long they play.</param>
/// <param name="Gigabytes">What they fill of a drive, in thousands of millions of bytes; null where a frame's size is unknown.</param>
public sealed record ScanSum(long Frames, Ratio Seconds, Ratio? Gigabytes);
