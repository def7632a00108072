namespace Spoolbook.Shoot.Accounts;

/// <summary>What a production's film can be split up by.</summary>
public enum Sharing
{
    /// <summary>Each roll, by name.</summary>
    Roll,

    /// <summary>Each take, by its slate. Film without a take has no slate.</summary>
    Take,

    /// <summary>Each scene. Film without a take has no scene.</summary>
    Scene,

    /// <summary>Each day on which film was used, as <c>2026-10-04</c>.</summary>
    Day,

    /// <summary>Each lot of raw stock, a short end under its parent's.</summary>
    Lot,

    /// <summary>Each camera body.</summary>
    Body,

    /// <summary>Each person who kept the camera, by id.</summary>
    Assistant,
}
