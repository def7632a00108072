namespace Spoolbook.Film.Exposures;

/// <summary>
/// A stock's reciprocity failure as one exponent: a metered time of t seconds becomes t^p if it is longer than one. Up to
/// a second it stays. Makers of black-and-white film print it so (from memory).
/// </summary>
public sealed record ReciprocityLaw : IReciprocity
{
    /// <summary>The law with an exponent of at least 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An exponent below 1: film at long times needs more light, not less.</exception>
    public ReciprocityLaw(double exponent)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(exponent, 1);
        Exponent = exponent;
    }

    /// <summary>The p of t^p.</summary>
    public double Exponent { get; }

    /// <inheritdoc/>
    public string Name => "the stock's exponent";

    /// <summary>
    /// The stops to open by at the time the shutter is held open: log2 of that time over the metered time behind it, which
    /// is its p-th root.
    /// </summary>
    /// <param name="seconds">Seconds that the shutter is open, above 0.</param>
    public double? CorrectionAt(double seconds) => seconds <= 1 ? 0 : (1 - (1 / Exponent)) * Math.Log2(seconds);

    /// <inheritdoc/>
    public double? HeldFor(double metered) => metered <= 1 ? metered : Math.Pow(metered, Exponent);
}
