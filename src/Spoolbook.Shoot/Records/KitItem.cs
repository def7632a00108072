namespace Spoolbook.Shoot.Records;

/// <summary>Anything else that must go back.</summary>
/// <param name="TakeUp">Whether these are the empty take-up spools.</param>
public sealed record KitItem(Place Place, Located<string> Name, Located<bool>? TakeUp, Returned Returned)
{
    /// <summary>Its serial number, or a mark on it.</summary>
    public Located<string>? Serial { get; init; }
}
