namespace Spoolbook.Shoot.Shipments;

/// <summary>A production's part of the bill for a consignment, in whole cents.</summary>
/// <param name="Work">The lab's work on its own rolls.</param>
/// <param name="Minimum">Its part of what the order lacks to a minimum.</param>
/// <param name="Shipping">Its part of shipping.</param>
/// <param name="Tax">Its part of the tax.</param>
public sealed record ShipmentShare(SchoolProduction Production, decimal Work, decimal Minimum, decimal Shipping, decimal Tax)
{
    /// <summary>Its part before tax.</summary>
    public decimal BeforeTax => Work + Minimum + Shipping;

    /// <summary>All of it.</summary>
    public decimal Total => BeforeTax + Tax;

    /// <summary>Who pays, as the production writes it on one line; empty where it does not.</summary>
    public string Payer => string.Join(", ", (Production.Books.Production.Lab?.BillTo ?? []).Select(l => l.Value));
}
