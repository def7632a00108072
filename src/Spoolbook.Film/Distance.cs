namespace Spoolbook.Film;

/// <summary>A distance from the film plane to the subject, exact, or infinity. <c>default</c> is zero.</summary>
/// <param name="Millimetres">Millimetres; zero or more. Not used at infinity.</param>
/// <param name="IsInfinity">Whether the lens is set to infinity.</param>
public readonly record struct Distance(Ratio Millimetres, bool IsInfinity)
{
    /// <summary>
    /// As it was written, a space before each unit: <c>40 ft</c>, <c>5 ft 6 in</c>; null for a computed distance. Two
    /// ways to write one distance are equal.
    /// </summary>
    public string? Written { get; init; }

    /// <summary>Beyond the last distance on the lens's scale.</summary>
    public static Distance Infinity => new(Ratio.Zero, true);

    /// <summary>Reads <c>6ft</c>, <c>5ft 6in</c>, <c>1.8m</c>, <c>80cm</c>, <c>450mm</c>, <c>30in</c> or <c>inf</c>.</summary>
    public static Parsed<Distance, DistanceFault> Parse(string text) => DistanceForm.Read(text);

    /// <inheritdoc/>
    public bool Equals(Distance other) => (Millimetres, IsInfinity) == (other.Millimetres, other.IsInfinity);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Millimetres, IsInfinity);
}
