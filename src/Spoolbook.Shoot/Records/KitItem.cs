namespace Spoolbook.Shoot.Records;

/// <summary>Anything else that must go back.</summary>
/// <param name="TakeUp">Whether these are the empty take-up spools that rolls are wound on to.</param>
public sealed record KitItem(Place Place, Located<string> Name, Located<bool>? TakeUp, Returned Returned)
{
    /// <summary>Its number, or a mark to know it by.</summary>
    public Located<string>? Serial { get; init; }
}
