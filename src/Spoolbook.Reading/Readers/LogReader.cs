using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Trees;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Reading.Readers;

/// <summary>A roll's log, entry by entry. Keeps track of the speed last set and of where the film is.</summary>
sealed class LogReader
{
    readonly ReadingContext _context;
    RollStand _stand;

    public LogReader(ReadingContext context, Load? load)
    {
        _context = context;
        _stand = RollStand.Loaded(load);
    }

    public ImmutableArray<LogEntry> Read(ImmutableArray<Node> items)
    {
        var entries = ImmutableArray.CreateBuilder<LogEntry>(items.Length);
        foreach (var item in items)
        {
            // A length written as a time runs at the speed set before it.
            _context.Speed = _stand.Speed;
            var entry = Entry(item);
            _stand = entry is null ? _stand.AfterUnreadable(_context.Speed) : _stand.After(entry);
            if (entry is not null)
            {
                entries.Add(entry);
            }
        }

        _context.Speed = Speed.Normal;
        return entries.ToImmutable();
    }

    LogEntry? Entry(Node item)
    {
        if (
            EntryKinds.KindOf(item, LogKeys.Kinds, "- take: {scene: 7, take: 1, to: 14+10, mark: good}", _context.Findings)
            is not
            ({ } kind, { } written)
        )
        {
            return null;
        }

        if (kind.Short != EntryShort.None && written.Value is ScalarNode words)
        {
            return Short(kind, written.Key, words);
        }

        return MapReader.Under(written, kind.Table, _context) is { } map ? Entry(kind, map) : null;
    }

    LogEntry? Entry(EntryKind kind, MapReader map)
    {
        LogEntry? entry = kind switch
        {
            _ when kind == LogKeys.Take => new TakeReader(_stand.OnSheet).Read(map),
            _ when kind == LogKeys.Rewind => Rewind(map),
            _ when kind == LogKeys.RunOff => RunOff(map),
            _ when kind == LogKeys.Fog => Fog(map),
            _ when kind == LogKeys.Wind => new Wind(map.Head),
            _ when kind == LogKeys.Remark => new Remark(map.Head),
            _ => Reload(map),
        };
        var at = map.Value(EntryKeys.At);
        var day = map.Value(EntryKeys.Day);
        var counter = map.Value(EntryKeys.Counter);
        var dial = map.Value(EntryKeys.Dial);
        var note = map.Value(EntryKeys.Note);
        var line = map.Value(EntryKeys.Line);
        return entry is null ? null : entry with { At = at, Day = day, Counter = counter, Dial = dial, Note = note, Line = line };
    }

    LogEntry? Short(EntryKind kind, ScalarNode key, ScalarNode words)
    {
        if (kind.Short == EntryShort.Words)
        {
            return new Remark(key.Place) { Note = words.IsBlank ? null : new Located<string>(words.Text, words.Place) };
        }

        if (!words.IsBlank && words.Text != "full")
        {
            _context.Findings.Add(
                SheetChecks.BadChoice,
                Sentence.Of("sheet/bad-choice.message.entry", ("text", Quote.Short(words.Text)), ("entry", kind.Word)),
                words.Place,
                Sentence.Of("sheet/bad-choice.help.entry", ("entry", kind.Word))
            );
        }

        return new Wind(key.Place);
    }

    static Rewind? Rewind(MapReader map) =>
        map.Value(RewindKeys.To) is not { } to
            ? map.LetGo<Rewind>()
            : new Rewind(map.Head)
            {
                To = to,
                ShutterClosed = map.Value(RewindKeys.Shutter),
                InDark = map.Value(RewindKeys.In),
                CounterZeroed = map.Value(RewindKeys.CounterZeroed),
            };

    static RunOff? RunOff(MapReader map) =>
        map.Value(RunOffKeys.To) is not { } to
            ? map.LetGo<RunOff>()
            : new RunOff(map.Head) { To = to, Capped = map.Value(RunOffKeys.Lens) };

    static Fog? Fog(MapReader map) =>
        (map.Value(FogKeys.Before), map.Value(FogKeys.After)) is ({ } before, { } after)
            ? new Fog(map.Head) { Before = before, After = after }
            : map.LetGo<Fog>();

    // A zero nearer the head is a negative distance down the film.
    static Located<Footage>? Back(Located<Footage>? nearer) =>
        nearer is null ? null : new Located<Footage>(Footage.Zero - nearer.Value, nearer.Place);

    static Reload Reload(MapReader map) =>
        new(map.Head)
        {
            On = map.Value(ReloadKeys.On),
            By = map.Value(ReloadKeys.By),
            Body = map.Value(ReloadKeys.Body),
            Light = map.Value(ReloadKeys.Light),
            ZeroMoved = map.Value(ReloadKeys.ZeroMoved) ?? Back(map.Value(ReloadKeys.ZeroBack)),
            Lost = map.Value(ReloadKeys.Lost),
            To = map.Value(ReloadKeys.To),
        };
}
