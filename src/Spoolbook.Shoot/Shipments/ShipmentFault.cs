using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Shipments;

/// <summary>Something to know before a consignment goes. An error stops it.</summary>
/// <param name="Place">Where it is written, from the school's folder.</param>
/// <param name="Message">What is wrong, and then what to do.</param>
public sealed record ShipmentFault(Level Level, Place Place, string Message)
{
    /// <summary>A place of a production, from the school's folder.</summary>
    public static Place At(SchoolProduction production, Place place) =>
        place with
        {
            File = production.Folder.Length == 0 ? place.File : $"{production.Folder}/{place.File}",
        };
}
