using Spoolbook.Entry.Tables;
using Spoolbook.Film;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Entry.Takes;

/// <summary>Reads the cells of rows, and reports what is wrong with them at their addresses.</summary>
sealed class RowParser(Production production, TakeHeads heads, Objections refused, Objections notes)
{
    readonly FilmCells _film = new(production);
    readonly Dictionary<TakeColumn, List<string>> _empty = [];

    public Production Production => production;

    public TakeHeads Heads => heads;

    public void Refuse(TakeRow row, TakeColumn column, string message, string help) => refused.Add(row.Where(column), message, help);

    public void Note(TakeRow row, TakeColumn column, string message) => notes.Add(row.Where(column), message, "");

    /// <summary>Whether a row names its take and roll; if not, reports what is missing.</summary>
    public bool HasSlate(TakeRow row)
    {
        var before = refused.Count;
        foreach (var column in TakeHeads.Needed.Where(c => row.Text(c).Length == 0))
        {
            Refuse(row, column, $"The row has no {heads.Name(column)}.", "Write it, or empty the row.");
        }

        foreach (var (column, cell) in row.Cells.OrderBy(c => c.Value.Column))
        {
            if (!IsRead(column, cell))
            {
                continue;
            }

            if (cell.Kind == CellKind.Fault)
            {
                Refuse(
                    row,
                    column,
                    $"'{cell.Text}' is what a formula gives that cannot be worked out.",
                    "Mend the formula, or write the value."
                );
            }
            else if (cell.Kind == CellKind.Date && column != TakeColumn.Day)
            {
                Refuse(
                    row,
                    column,
                    $"This is a date, {cell.Text}: the spreadsheet turned what was typed into one.",
                    "Give the cell the format Text, and type it again: 8/11."
                );
            }
        }

        foreach (var (key, cell) in row.Keys.Where(k => k.Value.Kind is CellKind.Fault or CellKind.Date))
        {
            refused.Add(
                cell.Address,
                cell.Kind == CellKind.Fault
                    ? $"'{cell.Text}' is what a formula gives that cannot be worked out."
                    : $"This is a date or an hour, {cell.Text}: the spreadsheet turned what was typed into one.",
                $"Give the cell the format Text, and type `{key}` as in a roll file."
            );
        }

        if (row[TakeColumn.Take] is { Kind: not (CellKind.Fault or CellKind.Date) } number && CellComparison.WholeOf(number) is not > 0)
        {
            Refuse(row, TakeColumn.Take, $"'{number.Text}' is no number of a take.", "Write a whole number from 1.");
        }

        return refused.Count == before;
    }

    // The sheet computes these, and screen time only repeats the frames.
    static bool IsRead(TakeColumn column, Cell cell) =>
        column switch
        {
            TakeColumn.ScreenTime => false,
            TakeColumn.Frames or TakeColumn.From or TakeColumn.To or TakeColumn.Length => !cell.IsFormula,
            _ => true,
        };

    /// <summary>The film in a cell at the usual speed; null, without a report, where there is none.</summary>
    public CellFilm? FilmOrNone(TakeRow row, TakeColumn column) =>
        row[column] is { } cell ? _film.Read(cell, InFrames(column), Spoolbook.Film.Speed.Normal, out _) : null;

    /// <summary>The film in a cell; null where there is none or the sheet computes it.</summary>
    public CellFilm? Film(TakeRow row, TakeColumn column, Speed speed)
    {
        if (row[column] is not { } cell || !IsRead(column, cell))
        {
            return null;
        }

        var inFrames = InFrames(column);
        var film = _film.Read(cell, inFrames, speed, out var message);
        if (film is null)
        {
            Refuse(row, column, message, _film.Help(inFrames));
        }

        return film;
    }

    static bool InFrames(TakeColumn column) => column is TakeColumn.FromFrame or TakeColumn.ToFrame or TakeColumn.Frames;

    /// <summary>The speed in a cell; null, with what is wrong, where there is none.</summary>
    public (Speed Speed, string Text)? Speed(TakeRow row)
    {
        var cell = row[TakeColumn.Speed]!;
        var text = cell.Text.Trim();
        if (CellNumbers.Decimal(text) is { } number && text.Contains(',', StringComparison.Ordinal))
        {
            text = number.ToShortText(6);
        }

        var parsed = Spoolbook.Film.Speed.Parse(text);
        if (parsed.TryGet(out var speed))
        {
            return (speed, text);
        }

        Refuse(row, TakeColumn.Speed, InWords(parsed.Slip), "Write frames a second: 24, 23.976 or 24000/1001.");
        return null;
    }

    /// <summary>The day in a cell; null, with what is wrong, where there is none.</summary>
    public DateOnly? Day(TakeRow row)
    {
        var cell = row[TakeColumn.Day]!;
        var day = CellComparison.DayOf(cell);
        if (day is null)
        {
            Refuse(
                row,
                TakeColumn.Day,
                $"'{cell.Text}' is no day of the calendar, or one that can be read in two ways.",
                "Write year, month and day: 2026-10-04."
            );
        }

        return day;
    }

    /// <summary>The mark in a cell; null, with what is wrong, where there is none.</summary>
    public Mark? Mark(TakeRow row)
    {
        var text = row.Text(TakeColumn.Mark);
        foreach (var (mark, code) in heads.Marks)
        {
            if (code.Equals(text, StringComparison.OrdinalIgnoreCase))
            {
                return mark;
            }
        }

        if (Reading.Editing.TakeKeyNames.MarkOf(text) is { } written)
        {
            return written;
        }

        Refuse(
            row,
            TakeColumn.Mark,
            text.Length == 0 ? "The new take has no mark." : $"'{text}' is no mark.",
            "Write "
                + string.Join(
                    ", ",
                    heads.Marks.DistinctBy(m => m.Mark).Select(m => $"{m.Code} ({Reading.Editing.TakeKeyNames.Of(m.Mark)})")
                )
                + "."
        );
        return null;
    }

    /// <summary>Whether a cell has a valid stop; if not, reports what is wrong.</summary>
    public bool IsStop(TakeRow row)
    {
        var parsed = Stop.Parse(row.Text(TakeColumn.Stop));
        if (!parsed.Succeeded)
        {
            Refuse(
                row,
                TakeColumn.Stop,
                InWords(parsed.Slip),
                "Write it as on the ring: 5.6, T2, 4/5.6 or 5.6 1/3; in a spreadsheet with the format Text."
            );
        }

        return parsed.Succeeded;
    }

    /// <summary>Remembers an empty cell where the roll file has a value.</summary>
    public void Empty(TakeRow row, TakeColumn column)
    {
        if (!_empty.TryGetValue(column, out var where))
        {
            _empty[column] = where = [];
        }

        where.Add(row.Where(column));
    }

    /// <summary>Reports the empty cells where the roll file has a value, column by column.</summary>
    public void NoteEmpty()
    {
        foreach (var (column, where) in _empty.OrderBy(e => e.Key))
        {
            var rest = where.Count == 1 ? "" : $", as {where.Count - 1} more of the column";
            notes.Add(
                where[0],
                $"This cell is empty{rest}, and the roll file says something: that stays.",
                $"Write {CellComparison.Nothing} to take it out."
            );
        }
    }

    /// <summary>What is wrong with a cell, as a sentence; empty where nothing is.</summary>
    public static string InWords(Slip? slip) =>
        slip is not null && SlipSentences.Of(slip).Whole.ToString() is [var first, .. var rest]
            ? $"{char.ToUpperInvariant(first)}{rest}."
            : "";
}
