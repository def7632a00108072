namespace Spoolbook.Shoot.Forecasts;

/// <summary>How much a forecast can give.</summary>
public enum ForecastBasis
{
    /// <summary>Nothing: no shot list, or it could not be read completely.</summary>
    NoList,

    /// <summary>Every listed shot has a good take.</summary>
    NothingLeft,

    /// <summary>Nothing: no shot is finished yet.</summary>
    NothingFinished,

    /// <summary>The plain average only: fewer shots are finished than <see cref="FilmForecast.FewestToDraw"/>.</summary>
    TooFew,

    /// <summary>Everything.</summary>
    Drawn,
}
