namespace Spoolbook.Shipping;

/// <summary>What the command line of <c>receive</c> says.</summary>
/// <param name="School">The school's folder, as typed.</param>
/// <param name="Cans">Cans that came back processed, as typed or read.</param>
/// <param name="Unprocessed">Cans that came back as they went.</param>
/// <param name="GoesOn">Cans that go to a lab again.</param>
/// <param name="Shipment">The only consignment that is meant; null for all.</param>
/// <param name="On">The day; null for today.</param>
internal sealed record ReceiveSettings(
    string School,
    string Shipments,
    IReadOnlyList<string> Cans,
    IReadOnlyList<string> Unprocessed,
    IReadOnlyList<string> GoesOn,
    string? Shipment,
    int? Box,
    bool All,
    DateOnly? On,
    string? By,
    IReadOnlyList<string> Lights,
    IReadOnlyList<string> Notes
)
{
    /// <summary>Whether it marks anything; otherwise it only says what is missing.</summary>
    public bool Marks => Cans.Count + Unprocessed.Count + GoesOn.Count > 0 || Box is not null || All;
}
