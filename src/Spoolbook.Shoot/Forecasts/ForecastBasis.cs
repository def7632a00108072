namespace Spoolbook.Shoot.Forecasts;

/// <summary>How much a forecast can say.</summary>
public enum ForecastBasis
{
    /// <summary>Nothing: no shots are listed, or the list could not be read whole.</summary>
    NoList,

    /// <summary>Every listed shot has a good take.</summary>
    NothingLeft,

    /// <summary>Nothing: no shot is finished yet.</summary>
    NothingFinished,

    /// <summary>The plain average only: fewer shots are finished than <see cref="FilmForecast.FewestToDraw"/>.</summary>
    TooFew,

    /// <summary>All of it.</summary>
    Drawn,
}
