namespace Spoolbook.Film;

/// <summary>The exact ratio of feet to metres: an inch is 25.4 mm by definition.</summary>
public static class Length
{
    /// <summary>0.3048 m, exact.</summary>
    public static Ratio MetresPerFoot { get; } = new(3048, 10000);

    /// <summary>304.8 mm, exact.</summary>
    public static Ratio MillimetresPerFoot { get; } = new(3048, 10);
}
