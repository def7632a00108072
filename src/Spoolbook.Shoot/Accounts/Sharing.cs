namespace Spoolbook.Shoot.Accounts;

/// <summary>What a production's film can be shared out by.</summary>
public enum Sharing
{
    /// <summary>Each roll, by name.</summary>
    Roll,

    /// <summary>Each take, by its slate. Film over which no take was shot has no slate.</summary>
    Take,

    /// <summary>Each scene. Film over which no take was shot has no scene.</summary>
    Scene,

    /// <summary>Each day on which film was spent, as <c>2026-10-04</c>.</summary>
    Day,

    /// <summary>Each lot of raw stock, through the parent of a short end.</summary>
    Lot,

    /// <summary>Each camera body.</summary>
    Body,

    /// <summary>Each person who kept the camera, by id.</summary>
    Assistant,
}
