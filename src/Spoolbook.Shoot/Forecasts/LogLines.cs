using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>How many lines a roll's log takes on paper.</summary>
public static class LogLines
{
    /// <summary>Whether an entry has a line of its own: all but a winding of the spring without a note.</summary>
    public static bool IsLine(LogEntry entry) => entry is not Wind { Note: null };

    /// <summary>
    /// The lines to expect on so much film, at the rate of the rolls so far; before the first roll, a line for each
    /// shot of the list at its screen length. Null where neither is known.
    /// </summary>
    /// <param name="book">The shoot.</param>
    /// <param name="film">Film to be loaded; not below zero.</param>
    public static int? Expected(ShootBook book, Footage film)
    {
        var shot = book.Counted.Where(r => r.Layers.Length > 0 && r.Tally.Exposed > Footage.Zero).ToList();
        if (shot.Count > 0)
        {
            var lines = shot.Sum(r => r.Strip.Moves.Count(m => IsLine(m.Entry)));
            return Ceiling(new Ratio(film.Frames * lines, shot.Sum(r => r.Tally.Exposed.Frames)));
        }

        var screen = book.Production.Shots.Select(s => s.Screen?.Value).OfType<Ratio>().Where(s => s.Sign > 0).ToList();
        return screen.Count == 0
            ? null
            : Ceiling(film.Seconds(book.Production.ProjectedAt) * screen.Count / screen.Aggregate((a, b) => a + b));
    }

    static int Ceiling(Ratio lines) => (int)Math.Ceiling(lines.ToDouble() - 1e-9);
}
