using Spoolbook.Film;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>Film for the shots left.</summary>
/// <param name="Sure">How sure it is to be enough.</param>
public sealed record ForecastLine(string Sure, string Needed, string Units, string Lacking, string ToOrder)
{
    internal static ForecastLine Of(ForecastFigure figure, PaperFormat format) =>
        new(
            format.Percent(new Ratio(figure.Percent, 100)),
            format.LengthRoundedUp(figure.Needed),
            PaperFormat.OrDash(figure.Units),
            figure.Units is null || figure.Lacking == Footage.Zero ? PaperFormat.OrDash(null) : format.LengthRoundedUp(figure.Lacking),
            figure.UnitsToOrder is > 0 ? ToOrderOf(figure, format) : PaperFormat.OrDash(null)
        );

    // A number alone where nobody can say of what.
    static string ToOrderOf(ForecastFigure figure, PaperFormat format) =>
        OrderWords.Units(figure.Orders, format) is { Length: > 0 } units ? units : PaperFormat.Number(figure.UnitsToOrder!.Value);
}
