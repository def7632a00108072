using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Cans;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Shipments;

/// <summary>A can in a consignment.</summary>
/// <param name="Number">Its place in the packing order, from 1.</param>
/// <param name="Box">Its box, from 1.</param>
public sealed record PackedCan(int Number, int Box, SchoolProduction Production, RollBook Roll)
{
    /// <summary>The code on its label.</summary>
    public CanCode Code => CanCode.Of(Production.Books.Production, Roll.Roll);

    /// <summary>The process; null where nobody says which.</summary>
    public string? Process => Roll.LabWork.Process;

    /// <summary>Stops to push or pull.</summary>
    public double Push => Roll.LabWork.Push;

    /// <summary>Film in the can, in feet.</summary>
    public Film.Ratio Feet => Production.Feet([Roll]);

    /// <summary>Where the roll is written, from the school's folder.</summary>
    public Place Place => Production.At(Roll.Roll.Name.Place);
}
