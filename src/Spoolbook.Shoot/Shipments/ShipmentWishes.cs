namespace Spoolbook.Shoot.Shipments;

/// <summary>What the person who ships asks for.</summary>
/// <param name="SentOn">The day on which it goes.</param>
public sealed record ShipmentWishes(DateOnly SentOn)
{
    /// <summary>Cans to a box unless said otherwise: what one person carries in one hand (common practice).</summary>
    public const int UsualBox = 12;

    /// <summary>The only lab that gets anything; null for all.</summary>
    public string? Lab { get; init; }

    /// <summary>Cans that a box holds, from 1.</summary>
    public int BoxHolds { get; init; } = UsualBox;

    /// <summary>What shipping and an order's minimum are shared by.</summary>
    public SharedBy SharedBy { get; init; }

    /// <summary>Names that a new consignment must not have.</summary>
    public IReadOnlyList<string> Taken { get; init; } = [];

    /// <summary>The folders of productions that stay here this time.</summary>
    public IReadOnlySet<string> Without { get; init; } = new HashSet<string>();
}
