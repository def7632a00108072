using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>Film rewound for another pass.</summary>
public sealed record Rewind(Place Place) : LogEntry(Place)
{
    /// <summary>Where the film is after it.</summary>
    public required Located<Footage> To { get; init; }

    /// <summary>Whether the variable shutter was closed, so that no frame saw light twice.</summary>
    public Located<bool>? ShutterClosed { get; init; }

    /// <summary>Whether the roll was rewound in the dark, out of the camera or in a bag.</summary>
    public Located<bool>? InDark { get; init; }

    /// <summary>Whether the frame counter was zeroed before the pass that is rewound.</summary>
    public Located<bool>? CounterZeroed { get; init; }

    /// <inheritdoc/>
    public override string Word => "rewind";
}
