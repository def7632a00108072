using Spoolbook.Film;
using Spoolbook.Film.Scans;

namespace Spoolbook.Shoot.Records;

/// <summary>What the lab is to deliver of the rolls that it scans.</summary>
public sealed record Deliver(Place Place)
{
    /// <summary>The size of a scanned frame, in pixels.</summary>
    public Located<Raster>? Raster { get; init; }

    /// <summary>Bits a colour: 8, 10, 12 or 16.</summary>
    public Located<int>? Bits { get; init; }

    /// <summary>Whether the files hold the negative's densities (log), or a picture to look at.</summary>
    public Located<bool>? IsLog { get; init; }

    /// <summary>The speed that the files play at.</summary>
    public Located<Speed>? Rate { get; init; }

    /// <summary>How much of the frame is in the picture, in words.</summary>
    public Located<string>? Framing { get; init; }

    /// <summary>How far the scan goes beyond the camera's picture, as a part of it: 0.05 for 5 %.</summary>
    public Located<Ratio>? Overscan { get; init; }

    /// <summary>The whole rolls, or takes by their marks.</summary>
    public Located<DeliveredTakes>? Takes { get; init; }

    /// <summary>How the files are named, in words.</summary>
    public Located<string>? Naming { get; init; }

    /// <summary>The type of the files, in words.</summary>
    public Located<string>? FileType { get; init; }

    /// <summary>Gigabytes of the drive that goes with each consignment; zero for none.</summary>
    public Located<Ratio>? Drive { get; init; }

    /// <summary>Megabytes of a frame, where the lab's files are compressed; else it follows from raster and bits.</summary>
    public Located<Ratio>? FrameSize { get; init; }

    /// <summary>What becomes of the sound.</summary>
    public Located<DeliveredSound>? Sound { get; init; }

    /// <summary>How much faster sound is played than it was recorded: 25/24.</summary>
    public Located<Ratio>? SoundRatio { get; init; }
}
