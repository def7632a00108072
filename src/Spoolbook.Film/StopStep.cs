namespace Spoolbook.Film;

/// <summary>How finely a stop is written.</summary>
public enum StopStep
{
    /// <summary>Thirds: <c>5.6 1/3</c>, "five-six and a third".</summary>
    Third,

    /// <summary>Halves: <c>4/5.6</c>, "four, five-six split".</summary>
    Half,

    /// <summary>Tenths, as meters show them: <c>5.6+0.3</c>.</summary>
    Tenth,
}
