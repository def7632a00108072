using System.Collections.Immutable;
using Spoolbook.Entry.Tables;
using Spoolbook.Film;
using Spoolbook.Reading.Editing;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Entry.Takes;

/// <summary>
/// What the rows of one roll change in its log. Walks the log from the load on, so that each row knows what earlier rows
/// moved.
/// </summary>
sealed class RollPlan
{
    readonly RollText _text;
    readonly RowParser _parser;
    readonly LengthStyle _style;
    readonly ImmutableArray<LogEntry> _log;
    readonly Dictionary<Take, Layer> _layers = new(ReferenceEqualityComparer.Instance);
    readonly HashSet<Take> _met = new(ReferenceEqualityComparer.Instance);
    RollStand _stand;
    int _at;

    public RollPlan(RollBook book, RollText text, RowParser parser)
    {
        Book = book;
        _text = text;
        _parser = parser;
        _log = book.Roll.Log;
        foreach (var layer in book.Layers)
        {
            _layers[layer.Take] = layer;
        }

        _style = new LengthStyle(
            parser.Production,
            book.Roll.Takes.SelectMany(t => text.KeysOf(t.Place)).Where(k => k.Key == TakeKeyNames.To).Select(k => k.Text)
        );
        _stand = book.Walk.Loading.After;
    }

    public RollBook Book { get; }

    public List<RollChange> Changes { get; } = [];

    public List<RowOutcome> Outcomes { get; } = [];

    /// <summary>Takes of the log without a row.</summary>
    public ImmutableArray<string> Missing => [.. Book.Roll.Takes.Where(t => !_met.Contains(t)).Select(t => t.Slate)];

    public int New => Changes.OfType<AddedEntry>().Count();

    public int Changed { get; private set; }

    public int Same { get; private set; }

    /// <summary>Applies the roll's rows, in the table's order.</summary>
    public void Apply(ImmutableArray<TakeRow> rows)
    {
        var matched = RowMatch.Match(rows, Book.Roll, t => _layers[t].Span, _parser);
        if (matched is null)
        {
            return;
        }

        var work = InOrder(matched.Value);
        for (var i = 0; i < work.Count; i++)
        {
            var (row, entry, occurrence) = work[i];
            if (entry is { } at)
            {
                AdvanceTo(at);
                Change(row, (Take)_log[at], occurrence);
                _at = at + 1;
            }
            else
            {
                var until = work.Skip(i + 1).Select(w => w.Entry).FirstOrDefault(e => e is not null) ?? _log.Length;
                Add(row, until, occurrence);
            }
        }

        AdvanceTo(_log.Length);
    }

    // A table may be sorted some other way. Takes in the log keep their places; only a new row needs its neighbours.
    List<MatchedRow> InOrder(ImmutableArray<MatchedRow> matched)
    {
        var known = matched.Where(m => m.Entry is not null).ToList();
        var sorted = known.Zip(known.Skip(1)).All(p => p.First.Entry < p.Second.Entry);
        if (sorted || known.Count == matched.Length)
        {
            return [.. matched.OrderBy(m => sorted ? 0 : m.Entry)];
        }

        var added = matched.First(m => m.Entry is null);
        _parser.Refuse(
            added.Row,
            TakeColumn.Take,
            $"{added.Row.Said} is new, and the rows of {added.Row.Roll} are not in the order they were shot: nobody can "
                + $"tell where it belongs.",
            "Sort the table by roll and by the frame that each take starts at, pass by pass."
        );
        return [.. known.OrderBy(k => k.Entry)];
    }

    void AdvanceTo(int entry)
    {
        for (; _at < entry; _at++)
        {
            var passed = _log[_at];
            if (passed is not Take take)
            {
                Follow(passed);
                continue;
            }

            // Earlier rows may have changed speed and day: writes out those the take ran at.
            var keys = new List<KeyValue>();
            if (take.SpeedWritten is null && take.Speed != _stand.Speed)
            {
                keys.Add(new KeyValue(TakeKeyNames.Speed, take.Speed.ToString()));
            }

            var dated = OnDay(take, _layers[take].On, keys);
            if (keys.Count > 0)
            {
                Changes.Add(new ChangedEntry(take.Place, [.. keys]));
            }

            Follow(Moved(dated, _layers[take]));
        }
    }

    // The take on its day, with a key for the day where nothing else gives it.
    Take OnDay(Take take, DateOnly day, List<KeyValue> keys)
    {
        if (day == _stand.Meet(take).Day)
        {
            return take;
        }

        var (key, written) = (take.Day is null ? TakeKeyNames.On : TakeKeyNames.Day, new Located<DateOnly>(day, take.Place));
        keys.Add(new KeyValue(key, day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)));
        return take.Day is null ? take with { On = written } : take with { Day = written };
    }

    // A take written by its length ends farther down if it starts farther down.
    Take Moved(Take take, Layer layer) =>
        take.From is null && IsWritten(take, TakeKeyNames.Frames) && _stand.OnSheet is { } stand
            ? take with
            {
                To = take.To with { Value = stand + (take.To.Value - (layer.Written.From - _stand.Zero)) },
            }
            : take;

    void Follow(LogEntry entry) => _stand = _stand.After(entry);

    void Change(TakeRow row, Take take, int occurrence)
    {
        _met.Add(take);
        var keys = new List<KeyValue>();
        var layer = _layers[take];
        if (
            SpeedOf(row, take.Speed) is not { } speed
            || FilmWishes.Read(row, layer.Span, layer.Span.From, speed.Speed, _parser) is not { } wishes
        )
        {
            Follow(take);
            return;
        }

        if (speed.Speed != (take.SpeedWritten?.Value ?? _stand.Speed))
        {
            keys.Add(new KeyValue(TakeKeyNames.Speed, speed.Text));
        }

        var (starts, ends) = Film(row, take, layer, wishes, speed.Speed, keys);
        var dated = (row[TakeColumn.Day] is null ? layer.On : _parser.Day(row)) is { } day ? OnDay(take, day, keys) : take;
        Words(row, take, layer, keys);
        Slate(row, take, keys);
        if (keys.Count > 0)
        {
            Changes.Add(new ChangedEntry(take.Place, [.. keys]));
            Changed++;
        }
        else
        {
            Same++;
        }

        Outcomes.Add(new RowOutcome(row, occurrence, starts + _stand.Zero, ends + _stand.Zero));
        Follow(dated with { To = take.To with { Value = ends }, Speed = speed.Speed });
    }

    /// <summary>Where a take is after its row, on the sheet's own count.</summary>
    (Footage Starts, Footage Ends) Film(TakeRow row, Take take, Layer layer, FilmWishes wishes, Speed speed, List<KeyValue> keys)
    {
        var stand = _stand.OnSheet ?? layer.Written.From - _stand.Zero;
        var starts = take.From?.Value ?? stand;
        if (wishes.From is { } from && from - _stand.Zero != starts)
        {
            starts = from - _stand.Zero;
            Position(row, TakeColumn.FromFrame, TakeKeyNames.From, starts, speed, Text(take, TakeKeyNames.From), keys);
        }

        var relative = IsWritten(take, TakeKeyNames.Frames);
        var ends = wishes.To - _stand.Zero ?? (relative ? layer.Written.To - _stand.Zero : take.To.Value);
        if (!relative && ends != take.To.Value)
        {
            Position(row, TakeColumn.ToFrame, TakeKeyNames.To, ends, speed, Text(take, TakeKeyNames.To), keys);
        }
        else if (relative && ends - starts != LengthOf(take, speed))
        {
            // Written by its length, the take must still end where its row says, from any start and at any speed.
            Position(row, TakeColumn.ToFrame, TakeKeyNames.Frames, ends - starts, speed, Text(take, TakeKeyNames.Frames), keys);
        }

        // Without a start of its own a take starts where the film is, whatever its row says.
        if (wishes.From is null && take.From is null && starts + _stand.Zero != layer.Written.From && row.Table.Has(TakeColumn.FromFrame))
        {
            _parser.Note(
                row,
                TakeColumn.FromFrame,
                $"{row.Said} starts at frame {(starts + _stand.Zero).Frames} now, where the take before it ended."
            );
        }

        return (starts, ends);
    }

    Footage LengthOf(Take take, Speed speed) =>
        FilmLength.Parse(Text(take, TakeKeyNames.Frames) ?? "", _parser.Production.Gauge).TryGet(out var length)
            ? length.In(_parser.Production.Gauge, speed)
            : Footage.Zero;

    void Position(TakeRow row, TakeColumn column, string key, Footage film, Speed speed, string? like, List<KeyValue> keys)
    {
        if (film < Footage.Zero)
        {
            _parser.Refuse(
                row,
                column,
                key == TakeKeyNames.Frames
                    ? "The take would end before it starts."
                    : "The take would lie before the beginning of the roll, or of its count after it was rethreaded.",
                "Write frames counted from the head of the roll."
            );
            return;
        }

        keys.Add(new KeyValue(key, _style.Write(film, speed, like)));
    }

    void Words(TakeRow row, Take take, Layer layer, List<KeyValue> keys)
    {
        if (row[TakeColumn.Mark] is not null && _parser.Mark(row) is { } mark && mark != take.Mark.Value)
        {
            keys.Add(new KeyValue(TakeKeyNames.Mark, TakeKeyNames.Of(mark)));
        }

        if (Differs(row, TakeColumn.Lens, take.Lens?.Value))
        {
            keys.Add(Written(TakeKeyNames.Lens, row.Text(TakeColumn.Lens)));
        }

        if (
            row[TakeColumn.Stop] is { } stop
            && !CellComparison.Same(stop.Text, take.Stop?.Value)
            && (stop.Text.Trim() == CellComparison.Nothing || _parser.IsStop(row))
        )
        {
            keys.Add(Written(TakeKeyNames.Stop, row.Text(TakeColumn.Stop)));
        }
        else if (row[TakeColumn.Stop] is null && row.Table.Has(TakeColumn.Stop) && take.Stop is not null)
        {
            _parser.Empty(row, TakeColumn.Stop);
        }

        if (row[TakeColumn.Focus] is { } focus && !CellComparison.Same(focus.Text, take.Focus?.Value))
        {
            keys.Add(Written(TakeKeyNames.Focus, CellComparison.FocusOf(row.Text(TakeColumn.Focus))));
        }
        else if (row[TakeColumn.Focus] is null && row.Table.Has(TakeColumn.Focus) && take.Focus is not null)
        {
            _parser.Empty(row, TakeColumn.Focus);
        }

        if (Differs(row, TakeColumn.Filter, string.Join(" + ", take.Filters.Select(f => f.Value))))
        {
            keys.Add(Filters(row.Text(TakeColumn.Filter)));
        }

        if (Differs(row, TakeColumn.Remarks, take.Note?.Value))
        {
            keys.Add(Written(TakeKeyNames.Note, row.Text(TakeColumn.Remarks)));
        }

        foreach (var (key, cell) in InKeyOrder(row).Where(k => k.Cell.Text.Trim() != (Text(take, k.Key) ?? CellComparison.Nothing)))
        {
            keys.Add(OfKey(key, cell.Text.Trim()));
        }

        if (Differs(row, TakeColumn.Body, layer.Body))
        {
            _parser.Refuse(
                row,
                TakeColumn.Body,
                $"{row.Said} was shot with '{layer.Body}', the body that the roll was in.",
                "Change it in the roll's file: at its head, or where the roll was rethreaded."
            );
        }
    }

    bool Differs(TakeRow row, TakeColumn column, string? value)
    {
        if (row[column] is { } cell)
        {
            return !CellComparison.Same(cell.Text, value);
        }

        if (row.Table.Has(column) && !CellComparison.Same("", value) && column != TakeColumn.Body)
        {
            _parser.Empty(row, column);
        }

        return false;
    }

    static void Slate(TakeRow row, Take take, List<KeyValue> keys)
    {
        if (row.Slate.Scene != take.Scene.Value.Trim())
        {
            keys.Add(new KeyValue(TakeKeyNames.Scene, row.Slate.Scene));
        }

        if (row.Slate.Shot != (take.Shot?.Value.Trim() ?? ""))
        {
            keys.Add(row.Slate.Shot.Length == 0 ? KeyValue.Without(TakeKeyNames.Shot) : new KeyValue(TakeKeyNames.Shot, row.Slate.Shot));
        }

        if (CellComparison.WholeOf(row[TakeColumn.Take]!) != take.Number.Value)
        {
            keys.Add(new KeyValue(TakeKeyNames.Number, row.Slate.Take));
        }
    }

    void Add(TakeRow row, int until, int occurrence)
    {
        var mark = _parser.Mark(row);
        if (
            SpeedOf(row, null) is not { } speed
            || FilmWishes.Read(row, null, _stand.Position ?? Footage.Zero, speed.Speed, _parser) is not { } wishes
            || mark is null
        )
        {
            return;
        }

        if (wishes.To is null)
        {
            _parser.Refuse(
                row,
                TakeColumn.ToFrame,
                $"{row.Said} is new, and nothing says where it ends.",
                $"Write {_parser.Heads.Name(TakeColumn.ToFrame)}, or one of the lengths."
            );
            return;
        }

        AdvanceTo(SlotFor(wishes, until));
        var keys = new List<KeyValue>();
        Slate(row, keys);
        var set = row[TakeColumn.Speed] is null ? _stand.Speed : speed.Speed;
        if (set != _stand.Speed)
        {
            keys.Add(new KeyValue(TakeKeyNames.Speed, speed.Text));
        }

        // A length alone counts from where the film is, and the slot may have moved that.
        wishes = FilmWishes.Read(row, null, _stand.Position ?? Footage.Zero, set, _parser) ?? wishes;
        var starts = wishes.From - _stand.Zero;
        if (starts is { } from && from != _stand.OnSheet)
        {
            Position(row, TakeColumn.FromFrame, TakeKeyNames.From, from, set, null, keys);
        }

        var ends = wishes.To!.Value - _stand.Zero;
        Position(row, TakeColumn.ToFrame, TakeKeyNames.To, ends, set, null, keys);
        keys.Add(new KeyValue(TakeKeyNames.Mark, TakeKeyNames.Of(mark.Value)));
        NewWords(row, keys);
        var added = new Take(default)
        {
            Scene = new Located<string>(row.Slate.Scene, default),
            Number = new Located<int>(1, default),
            From = starts is { } start ? new Located<Footage>(start, default) : null,
            To = new Located<Footage>(ends, default),
            Speed = set,
            Mark = new Located<Mark>(mark.Value, default),
        };
        if (row[TakeColumn.Day] is not null && _parser.Day(row) is { } day)
        {
            added = OnDay(added, day, keys);
        }

        Changes.Add(AddedEntry.Take(_at == 0 ? null : _log[_at - 1].Place, [.. keys]));
        Outcomes.Add(new RowOutcome(row, occurrence, (starts ?? _stand.OnSheet ?? Footage.Zero) + _stand.Zero, ends + _stand.Zero));
        Follow(added);
    }

    static void Slate(TakeRow row, List<KeyValue> keys)
    {
        keys.Add(new KeyValue(TakeKeyNames.Scene, row.Slate.Scene));
        if (row.Slate.Shot.Length > 0)
        {
            keys.Add(new KeyValue(TakeKeyNames.Shot, row.Slate.Shot));
        }

        keys.Add(new KeyValue(TakeKeyNames.Number, row.Slate.Take));
    }

    void NewWords(TakeRow row, List<KeyValue> keys)
    {
        Put(TakeColumn.Lens, TakeKeyNames.Lens);
        if (row[TakeColumn.Stop] is { } stop && stop.Text.Trim() != CellComparison.Nothing && _parser.IsStop(row))
        {
            keys.Add(new KeyValue(TakeKeyNames.Stop, stop.Text.Trim()));
        }

        if (CellComparison.FocusOf(row.Text(TakeColumn.Focus)) is { Length: > 0 } focus && focus != CellComparison.Nothing)
        {
            keys.Add(new KeyValue(TakeKeyNames.Focus, focus));
        }

        if (row[TakeColumn.Filter] is { } filter && filter.Text.Trim() != CellComparison.Nothing)
        {
            keys.Add(Filters(filter.Text));
        }

        foreach (var (key, cell) in InKeyOrder(row).Where(k => k.Cell.Text.Trim() != CellComparison.Nothing))
        {
            keys.Add(OfKey(key, cell.Text.Trim()));
        }

        Put(TakeColumn.Remarks, TakeKeyNames.Note);

        void Put(TakeColumn column, string key)
        {
            if (row.Text(column) is { Length: > 0 } text && text != CellComparison.Nothing)
            {
                keys.Add(new KeyValue(key, text));
            }
        }
    }

    /// <summary>
    /// The entry that a new take goes before: of the places between its neighbours, the one where the film is at the take's
    /// first frame. If several fit, the one right after the take before it; at the end of the log, the last.
    /// </summary>
    int SlotFor(FilmWishes wishes, int until)
    {
        var slots = new List<(int At, Footage Stand)>();
        var stand = _stand;
        for (var at = _at; ; at++)
        {
            slots.Add((at, stand.Position ?? Footage.Zero));
            if (at == until)
            {
                break;
            }

            stand = stand.After(_log[at]);
        }

        var fits = slots
            .Where(s => wishes.From is { } from ? s.Stand == from : wishes.To is not { } to || s.Stand < to)
            .Select(s => s.At)
            .ToList();
        var atEnd = until == _log.Length || _at == 0;
        return fits.Count == 0 ? (atEnd ? until : _at)
            : atEnd ? fits[^1]
            : fits[0];
    }

    (Speed Speed, string Text)? SpeedOf(TakeRow row, Speed? now) =>
        row[TakeColumn.Speed] is not { } cell ? (now ?? _stand.Speed, (now ?? _stand.Speed).ToString())
        : now is { } was && CellComparison.Same(cell, was) ? (was, was.ToString())
        : _parser.Speed(row);

    bool IsWritten(Take take, string key) => Text(take, key) is not null;

    string? Text(Take take, string key) => _text.KeysOf(take.Place).FirstOrDefault(k => k.Key == key)?.Text;

    static KeyValue Written(string key, string text) => text == CellComparison.Nothing ? KeyValue.Without(key) : new KeyValue(key, text);

    static IEnumerable<(string Key, Cell Cell)> InKeyOrder(TakeRow row) =>
        TakeKeyNames.WithoutColumn.Where(row.Keys.ContainsKey).Select(k => (k, row.Keys[k]));

    // A list as the roll file has it, `[6ft, 9ft]`, or as filters are typed, `6ft + 9ft`. A part of a stop has no blank before it.
    static KeyValue OfKey(string key, string text) =>
        text == CellComparison.Nothing ? KeyValue.Without(key)
        : text is ['[', .. var list, ']'] ? new KeyValue(key, [.. list.Split(',', StringSplitOptions.TrimEntries)])
        : text.Contains(" + ", StringComparison.Ordinal) ? new KeyValue(key, [.. text.Split(" + ", StringSplitOptions.TrimEntries)])
        : new KeyValue(key, text);

    static KeyValue Filters(string text) =>
        text.Trim() == CellComparison.Nothing
            ? KeyValue.Without(TakeKeyNames.Filter)
            : new KeyValue(
                TakeKeyNames.Filter,
                [.. text.Split('+', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)]
            );
}
