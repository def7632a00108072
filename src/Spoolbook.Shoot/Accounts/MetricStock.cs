namespace Spoolbook.Shoot.Accounts;

/// <summary>
/// Stock in whole centimetres, as a metric paper prints it. Sealed units count with their printed length: three of
/// 122.00 m are 366.00 m.
/// </summary>
/// <param name="Received">Units of the first delivery.</param>
/// <param name="Unopened">Units still sealed, or canned again.</param>
/// <param name="ShortEnds">Short ends in their cans.</param>
/// <param name="InCamera">Unexposed film in the cameras.</param>
public sealed record MetricStock(long Received, long Unopened, long ShortEnds, long InCamera)
{
    /// <summary>Film to load.</summary>
    public long OnHand => Unopened + ShortEnds;

    /// <summary>Film that can still be shot.</summary>
    public long Left => OnHand + InCamera;

    /// <summary>Stock of two lots together.</summary>
    public static MetricStock operator +(MetricStock a, MetricStock b) =>
        new(a.Received + b.Received, a.Unopened + b.Unopened, a.ShortEnds + b.ShortEnds, a.InCamera + b.InCamera);
}
