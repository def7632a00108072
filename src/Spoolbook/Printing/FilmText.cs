using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Printing;

/// <summary>Lengths for the terminal, in the units of the production's papers.</summary>
internal sealed class FilmText(Production production)
{
    bool InMetres => production.Units == LengthUnit.Metres;

    /// <summary>The unit: <c>ft</c> or <c>m</c>.</summary>
    public string Unit => InMetres ? "m" : "ft";

    /// <summary>A length: <c>31+12</c>, or metres with two decimals.</summary>
    public string Of(Footage length) => InMetres ? length.Metres(production.Gauge).ToText(2) : length.FeetAndFrames(production.Gauge);

    /// <summary>A length with its unit.</summary>
    public string WithUnit(Footage length) => $"{Of(length)} {Unit}";

    /// <summary>A length of an account; in metres, as the papers print it, so that its parts add up.</summary>
    public string Account(Footage length, long centimetres) => InMetres ? new Ratio(centimetres, 100).ToText(2) : Of(length);
}
