using Spoolbook.Film;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Forecasts;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>Film for the shots left in a percentage of draws.</summary>
public sealed record ForecastLine(string Cases, string Needed, string Units, string Lacking, string ToOrder)
{
    internal static ForecastLine Of(ForecastFigure figure, PaperFormat format) =>
        new(
            format.Words.Fill("forecast-cases", ("percent", PaperFormat.Number(figure.Percent))),
            format.LengthRoundedUp(figure.Needed),
            PaperFormat.OrDash(figure.Units),
            figure.Units is null || figure.Lacking == Footage.Zero ? PaperFormat.OrDash(null) : format.LengthRoundedUp(figure.Lacking),
            figure.UnitsToOrder is > 0 ? ToOrderOf(figure, format) : PaperFormat.OrDash(null)
        );

    // A number alone where nobody can say of what.
    static string ToOrderOf(ForecastFigure figure, PaperFormat format) =>
        OrderWords.Units(figure.Orders, format) is { Length: > 0 } units ? units : PaperFormat.Number(figure.UnitsToOrder!.Value);
}
