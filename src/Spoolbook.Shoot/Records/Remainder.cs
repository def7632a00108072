namespace Spoolbook.Shoot.Records;

/// <summary>What becomes of film left over when a roll is taken out: <c>kept</c> as a short end, or <c>thrown</c> away.</summary>
public enum Remainder
{
    /// <summary>Canned and labelled: a short end.</summary>
    Kept,

    /// <summary>Too short to be of use: waste.</summary>
    Thrown,
}
