namespace Spoolbook.Shoot.Accounts;

/// <summary>The kinds of things in a kit, in the order of lists.</summary>
public enum KitKind
{
    /// <summary>A camera body.</summary>
    Body,

    /// <summary>A lens.</summary>
    Lens,

    /// <summary>A filter.</summary>
    Filter,

    /// <summary>A light meter.</summary>
    Meter,

    /// <summary>A motor.</summary>
    Motor,

    /// <summary>Anything else.</summary>
    Item,
}
