using Spoolbook.Film;

namespace Spoolbook.Entry.Takes;

/// <summary>The length of film in a cell, in frames, and how exact it is.</summary>
/// <param name="Exact">Frames, with the fraction that a rounded number of feet or metres leaves.</param>
readonly record struct CellFilm(Ratio Exact)
{
    /// <summary>The nearest whole frame.</summary>
    public Footage Nearest => new((long)Exact.Round());

    /// <summary>Whether a cell can show that much film as this number. A hundredth of a metre is more than a frame of 16 mm.</summary>
    public bool Agrees(Footage film)
    {
        var apart = Exact - new Ratio(film.Frames, 1);
        return apart < new Ratio(7, 10) && apart > new Ratio(-7, 10);
    }
}
