using Spoolbook.Film;
using Spoolbook.Papers.Wording;

namespace Spoolbook.Papers.WrapSummaries.Charts;

/// <summary>An axis: the positions of values, and the round values marked on it.</summary>
/// <param name="Least">The value at <paramref name="Start"/>.</param>
/// <param name="Most">The value at <paramref name="End"/>; above <paramref name="Least"/>.</param>
sealed record ChartScale(double Least, double Most, double Start, double End)
{
    static readonly double[] Round = [1, 2, 5, 10];

    public double At(double value) => Start + ((End - Start) * (value - Least) / (Most - Least));

    /// <summary>The round values on the axis, far enough apart for their labels; including zero where it is on the axis.</summary>
    public IEnumerable<double> Marks(double apart)
    {
        var least = apart * (Most - Least) / Math.Abs(End - Start);
        var power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        var step = Round.Select(r => r * power).First(s => s >= least * (1 - 1e-9));
        for (var i = Math.Ceiling((Least / step) - 1e-9); i * step <= Most + (step * 1e-9); i++)
        {
            yield return i * step;
        }
    }

    /// <summary>Film as a number of the production's unit.</summary>
    public static double Units(Footage film, PaperFormat format) => film.Frames / format.RulerUnit;
}
