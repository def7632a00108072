using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Shipments;

/// <summary>A can that went, as the record of its consignment has it.</summary>
/// <param name="Number">Its place in the packing order, from 1.</param>
/// <param name="Box">Its box, from 1.</param>
/// <param name="Code">The code on its label.</param>
/// <param name="Production">The production's folder, from the school's.</param>
/// <param name="Roll">The roll, by name.</param>
public sealed record ShippedCan(Place Place, int Number, int Box, string Code, string Production, string Roll)
{
    /// <summary>The production's title on the day that it went.</summary>
    public string Title { get; init; } = "";

    /// <summary>The process; null where nobody said which.</summary>
    public string? Process { get; init; }

    /// <summary>Stops to push or pull.</summary>
    public double Push { get; init; }

    /// <summary>Film in the can, in frames.</summary>
    public long Frames { get; init; }

    /// <summary>The digest (SHA-256, hexadecimal) of the file that the roll is written in, as it was sent.</summary>
    public string Record { get; init; } = "";
}
