using Spoolbook.Film;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Entry.Takes;

/// <summary>
/// Where a row wants its take on the film. Five columns say the same thing in different ways. A column that still
/// agrees with the papers asks for nothing; the others must agree with each other.
/// </summary>
/// <param name="From">The first frame, by the strip's positions; null where the row does not change it.</param>
/// <param name="To">The first frame after it; null where the row does not change it.</param>
readonly record struct FilmWishes(Footage? From, Footage? To)
{
    /// <param name="now">Where the take is now; null for a new take.</param>
    /// <param name="stand">Where it starts if the row does not say.</param>
    /// <returns>Null, with what is wrong, where the row contradicts itself.</returns>
    public static FilmWishes? Read(TakeRow row, Span? now, Footage stand, Speed speed, RowParser parser)
    {
        var well = true;
        CellFilm? Asked(TakeColumn column, Footage? was)
        {
            if (row[column] is null)
            {
                return null;
            }

            var film = parser.Film(row, column, speed);
            well &= film is not null || row[column]!.IsFormula;
            return film is { } told && was is { } old && told.Agrees(old) ? null : film;
        }

        var fromFrame = Asked(TakeColumn.FromFrame, now?.From);
        var toFrame = Asked(TakeColumn.ToFrame, now?.To);
        var from = Asked(TakeColumn.From, now?.From);
        var to = Asked(TakeColumn.To, now?.To);
        var frames = Asked(TakeColumn.Frames, now?.Length);
        var length = Asked(TakeColumn.Length, now?.Length);
        if (!well)
        {
            return null;
        }

        var starts = fromFrame?.Nearest ?? from?.Nearest;
        var start = starts ?? now?.From ?? stand;
        var ends = toFrame?.Nearest
            ?? to?.Nearest
            ?? (
                frames is { } f ? start + f.Nearest
                : length is { } l ? start + l.Nearest
                : (Footage?)null
            );
        var end = ends ?? now?.To;
        return
            Agree(row, TakeColumn.From, from, start, parser)
            && (
                end is not { } last
                || (
                    Agree(row, TakeColumn.To, to, last, parser)
                    && Agree(row, TakeColumn.Frames, frames, last - start, parser)
                    && Agree(row, TakeColumn.Length, length, last - start, parser)
                )
            )
            ? new FilmWishes(starts, ends)
            : null;
    }

    static bool Agree(TakeRow row, TakeColumn column, CellFilm? told, Footage film, RowParser parser)
    {
        if (told is not { } cell || cell.Agrees(film))
        {
            return true;
        }

        parser.Refuse(
            row,
            column,
            $"'{row.Text(column)}' disagrees with the other cells of the row, which come to {film.Frames} frames.",
            "Make them agree, or empty those that the sheet works out."
        );
        return false;
    }
}
