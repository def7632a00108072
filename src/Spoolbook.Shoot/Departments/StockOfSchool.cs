using Spoolbook.Film;

namespace Spoolbook.Shoot.Departments;

/// <summary>One stock over the shelf and all productions.</summary>
/// <param name="Stock">The stock, by its name on the can.</param>
/// <param name="Gauge">Its gauge.</param>
/// <param name="OnShelf">Film on the shelf.</param>
/// <param name="InProductions">Film that productions have and can still shoot.</param>
/// <param name="Lacking">What the productions will need beyond what they have.</param>
/// <param name="ShortNextWeek">What those that shoot within a week will need beyond what they and the shelf have.</param>
public sealed record StockOfSchool(
    string Stock,
    Gauge Gauge,
    Footage OnShelf,
    Footage InProductions,
    Footage Lacking,
    Footage ShortNextWeek
);
