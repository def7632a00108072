using Spoolbook.Film;

namespace Spoolbook.Shoot.Records;

/// <summary>A unit or a short end that was opened or loaded and canned again unexposed: a re-can.</summary>
public sealed record StockRecanned(Place Place) : StockEntry(Place)
{
    /// <summary>The end that was thrown away because it saw light; null where none was.</summary>
    public Located<Footage>? Off { get; init; }

    /// <inheritdoc/>
    public override string Word => "recanned";
}
