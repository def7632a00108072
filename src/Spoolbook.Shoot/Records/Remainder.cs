namespace Spoolbook.Shoot.Records;

/// <summary>What happens to film left over at unloading: <c>kept</c> as a short end, or <c>thrown</c> away.</summary>
public enum Remainder
{
    /// <summary>Canned and labelled: a short end.</summary>
    Kept,

    /// <summary>Too short to use: waste.</summary>
    Thrown,
}
