namespace Spoolbook.Film;

/// <summary>A mark on a variable shutter: how much of the full opening is left, and the stops it counts as.</summary>
/// <param name="Name">As engraved on the body, or as its user calls it: <c>half closed</c>.</param>
/// <param name="OpenFraction">The part of the full opening that is left, 0 (black) to 1.</param>
/// <param name="Stops">
/// The stops the trade counts for the mark, 0 or less. A convention: a quarter closed counts as half a stop, though its
/// opening makes log2 3/4 = -0.415.
/// </param>
public sealed record ShutterOpening(string Name, Ratio OpenFraction, double Stops)
{
    /// <summary>A mark that counts as the exact stops of its opening.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The fraction is not from 0 to 1.</exception>
    public static ShutterOpening ByOpening(string name, Ratio openFraction)
    {
        if (openFraction.Sign < 0 || openFraction > 1)
        {
            throw new ArgumentOutOfRangeException(nameof(openFraction), "The part of a shutter that is open is from 0 to 1.");
        }

        return new ShutterOpening(name, openFraction, Film.Stops.FromFraction(openFraction.ToDouble()));
    }

    /// <summary>Fully open.</summary>
    public static ShutterOpening Open { get; } = new("open", 1, 0);

    /// <summary>A quarter closed: counts as half a stop (common practice).</summary>
    public static ShutterOpening QuarterClosed { get; } = new("quarter closed", new Ratio(3, 4), -0.5);

    /// <summary>Half closed: one stop (common practice).</summary>
    public static ShutterOpening HalfClosed { get; } = new("half closed", new Ratio(1, 2), -1);

    /// <summary>Closed: the frame stays black (common practice).</summary>
    public static ShutterOpening Closed { get; } = new("closed", 0, Film.Stops.Black);

    /// <summary>The marks of common practice, open to closed, for a body that lists none of its own.</summary>
    public static IReadOnlyList<ShutterOpening> Usual { get; } = [Open, QuarterClosed, HalfClosed, Closed];

    /// <summary>
    /// The usual mark of that name, or null: <c>half closed</c>, or in short <c>half</c>; <c>quarter</c> is a
    /// quarter closed.
    /// </summary>
    public static ShutterOpening? Named(string name) => Usual.FirstOrDefault(mark => mark.Name == name || mark.Name == name + " closed");

    /// <summary>Whether no light passes.</summary>
    public bool IsBlack => OpenFraction.Sign == 0;
}
