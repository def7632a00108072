using Spoolbook.Film;

namespace Spoolbook.Entry.Takes;

/// <summary>Film as a cell tells it: how many frames, and how surely.</summary>
/// <param name="Exact">Frames, with the part of one that a rounded number of feet or metres leaves.</param>
readonly record struct CellFilm(Ratio Exact)
{
    /// <summary>The nearest whole frame.</summary>
    public Footage Nearest => new((long)Exact.Round());

    /// <summary>Whether so much film may be shown like this: a hundredth of a metre is more than a frame of 16 mm.</summary>
    public bool Agrees(Footage film)
    {
        var apart = Exact - new Ratio(film.Frames, 1);
        return apart < new Ratio(7, 10) && apart > new Ratio(-7, 10);
    }
}
