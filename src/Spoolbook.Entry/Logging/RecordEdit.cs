using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Spoolbook.Entry.Lines;
using Spoolbook.Reading.Editing;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Entry.Logging;

/// <summary>Turns what a line says into a change of the record. Writes nothing.</summary>
public sealed partial class RecordEdit
{
    const string Rolls = "rolls/",
        Note = "note";

    // A half-shot roll stays in the camera for a few days; lines about an older one are typed in later (common practice).
    const int MostDaysInCamera = 7;

    readonly SaidLine _said;
    readonly Production _production;
    readonly RecordFiles _files;
    readonly LineDay _day;

    RecordEdit(SaidLine said, Production production, RecordFiles files, LineDay day) =>
        (_said, _production, _files, _day) = (said, production, files, day);

    /// <summary>What a line changes.</summary>
    /// <param name="day">The shooting day of the lines.</param>
    public static RecordChange Of(SaidLine said, Production production, RecordFiles files, LineDay day) =>
        new RecordEdit(said, production, files, day).Change();

    RecordChange Change()
    {
        if (_said.Verb == LineVerb.Day)
        {
            return new RecordChange(LineDeed.Dated, null, null);
        }

        var known = _said.Number is { } number ? NumberedEntry.Find(number, _production) : null;
        return _said.Verb switch
        {
            LineVerb.Strike or LineVerb.Amend when _said.Target is null => known is null ? NoSuchNumber()
            : Open(known.Roll) is not { } text ? Unwritable(known.Roll)
            : _said.Verb == LineVerb.Strike ? Strike(known, text)
            : Amend(known, text),
            LineVerb.Strike or LineVerb.Amend => OfTarget(),
            _ when known is null => New(),
            _ when known.Digest == _said.Digest => new RecordChange(LineDeed.Nothing, known.Roll.Name.Value, null),
            _ => Open(known.Roll) is { } text ? Say(known, text) : Unwritable(known.Roll),
        };
    }

    string Where => $"{_said.Text.File}:{_said.Text.Line.ToString(CultureInfo.InvariantCulture)}";

    RecordChange Not(string message, string help) => RecordChange.Not(_said.Roll, Where, message, help);

    RecordChange NoSuchNumber() =>
        _said.Verb == LineVerb.Strike
            ? new RecordChange(LineDeed.Nothing, _said.Roll, null)
            : Not($"The record has no entry #{_said.Number}.", "Say the whole line, and it is added.");

    // A line without a number, or with one that is new to the record.
    RecordChange New()
    {
        if (_said.Verb == LineVerb.Load)
        {
            return Load();
        }

        if (_said.Roll is not { } name || _production.RollNamed(name) is not { } roll)
        {
            return Not($"The production has no roll '{_said.Roll}'.", "Load it first: load R04 N250-A/3 9:15");
        }

        if (Open(roll) is not { } text)
        {
            return Unwritable(roll);
        }

        var keys = WithLine(_said.Keys);
        if (_said.Verb == LineVerb.Unload)
        {
            return roll.Unload is { } unload
                ? Not($"{name} was taken out {unload.On.Value:yyyy-MM-dd HH:mm}.", "Strike that first, or name the roll: R05: unload 16:45")
                : Unload(roll, text, keys);
        }

        if (roll.Unload is not null)
        {
            return Not($"{name} is out of the camera.", "Name the roll that is in it: R05: 1A/4 to 70 G; or strike the unload first.");
        }

        var word = WordOf(_said.Verb);
        keys = _said.Verb == LineVerb.Reload ? AfterMidnight(roll, keys) : keys;
        var dated = _said.Verb == LineVerb.Reload ? null : Dated(roll);
        if (dated is { } day)
        {
            var key = _said.Verb == LineVerb.Take ? TakeKeyNames.On : TakeKeyNames.Day;
            keys = keys.Add(new KeyValue(key, day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)));
        }

        return Edit(LineDeed.Added, roll, text, AddedEntry.Last(word, keys)) with
        {
            Dated = dated,
        };
    }

    // A time alone is of the shooting day or night that the roll's log is in, unless the lines are of a later day.
    RecordChange Unload(Roll roll, RollText text, ImmutableArray<KeyValue> keys)
    {
        var on = keys.First(k => k.Key == TakeKeyNames.On);
        if (HasDate || !DateTime.TryParse(on.Values[0], CultureInfo.InvariantCulture, out var when))
        {
            return Edit(LineDeed.Added, roll, text, [.. PartsOfUnload(keys)]);
        }

        var met = RollWalk.Of(roll).EndOfLog.Meet(new Remark(default) { At = new Located<TimeOnly>(TimeOnly.FromDateTime(when), default) });
        if (!IsLinesDay(met) && met.When is { } walked)
        {
            keys = keys.Replace(on, Moment(on.Key, walked));
        }
        else
        {
            keys = AfterMidnight(roll, keys);
        }

        var written = DateTime.Parse(keys.First(k => k.Key == on.Key).Values[0], CultureInfo.InvariantCulture);
        var day = DateOnly.FromDateTime(written);
        return Edit(LineDeed.Added, roll, text, [.. PartsOfUnload(keys)]) with
        {
            Dated = day == _day.Day && day == DateOnly.FromDateTime(roll.Load.On.Value) ? null : day,
        };
    }

    RecordChange Load()
    {
        var name = _said.Roll!;
        if (_production.RollNamed(name) is { } there)
        {
            return Not($"There is a roll '{name}' already, in {there.Place.File}.", "Give this one another name.");
        }

        var roll = new NewRoll(
            [.. _said.Keys.Where(k => EntryTables.IsOfRoll(k.Key))],
            WithLine([.. _said.Keys.Where(k => !EntryTables.IsOfRoll(k.Key))])
        );
        if (ListFile() is { } file)
        {
            var before = _files.TextOf(file);
            var edited = before is null ? null : NewRollText.InList(file, before, roll);
            return edited is null ? Not($"{file} cannot be read.", "Correct it first: spoolbook check says what is wrong.")
                : edited.Fault is { } fault ? Not(fault.Message, fault.Help)
                : new RecordChange(LineDeed.Added, name, new ChangedFile(file, before, edited.Text));
        }

        var like = _production.Rolls.Select(r => _files.TextOf(r.Place.File)).LastOrDefault(t => t is not null) ?? "";
        var lineEnd = like.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var hasSchemas = _files.HasSchemas || like.StartsWith(NewRollText.SchemaLine, StringComparison.Ordinal);
        return new RecordChange(LineDeed.Added, name, new ChangedFile(FileOf(name), null, NewRollText.File(roll, lineEnd, hasSchemas)));
    }

    /// <summary>The file with the list of rolls; null where each roll has its own.</summary>
    string? ListFile() =>
        _files.IsOneFile ? _files.Names[0]
        : _production.Rolls is [.., var last] && !last.Place.File.StartsWith(Rolls, StringComparison.Ordinal) ? last.Place.File
        : null;

    // Follows the names of the other rolls' files: r04.yaml for R04, unless they keep the capital.
    string FileOf(string roll)
    {
        var stem = string.Concat(roll.Select(c => char.IsLetterOrDigit(c) || c is '-' or '_' ? c : '-'));
        var keeps = _production.Rolls.Any(r =>
            r.Place.File.Contains(r.Name.Value, StringComparison.Ordinal) && r.Name.Value.Any(char.IsUpper)
        );
        stem = keeps ? stem : stem.ToLowerInvariant();
        return Enumerable
            .Range(1, _files.Names.Length + 1)
            .Select(n => n == 1 ? $"{Rolls}{stem}.yaml" : string.Create(CultureInfo.InvariantCulture, $"{Rolls}{stem}-{n}.yaml"))
            .First(file => !_files.Names.Contains(file, StringComparer.OrdinalIgnoreCase));
    }

    RecordChange OfTarget()
    {
        if (_said.Roll is not { } name || _production.RollNamed(name) is not { } roll)
        {
            return Not("No roll is in a camera.", "Name the roll: R04: strike 1A/4");
        }

        if (Open(roll) is not { } text)
        {
            return Unwritable(roll);
        }

        if (_said.Target!.IsLast && roll.Unload is not null)
        {
            return _said.Verb == LineVerb.Strike
                ? Edit(LineDeed.Struck, roll, text, new RemovedUnload())
                : Edit(LineDeed.Amended, roll, text, [.. PartsOfUnload(Named(OnItsDate(roll.Unload, _said.Keys)))]);
        }

        var entry = _said.Target.IsLast ? roll.Log.LastOrDefault() : roll.Takes.LastOrDefault(t => t.Slate == _said.Target.Slate);
        return entry is null
                ? Not(
                    _said.Target.IsLast ? $"Nothing is in the log of {name} yet." : $"{name} has no take {_said.Target.Slate}.",
                    "Write the slate as in the roll's log."
                )
            : _said.Verb == LineVerb.Strike ? Edit(LineDeed.Struck, roll, text, new RemovedEntry(entry.Place))
            : Edit(
                LineDeed.Amended,
                roll,
                text,
                new ChangedEntry(entry.Place, Instead(Named(_said.Keys), text.KeysOf(entry.Place), entry.Word))
            );
    }

    RecordChange Strike(NumberedEntry known, RollText text) =>
        known.Entry is { } entry ? Edit(LineDeed.Struck, known.Roll, text, new RemovedEntry(entry.Place))
        : known.Part == RollPart.Unload ? Edit(LineDeed.Struck, known.Roll, text, new RemovedUnload())
        : !known.Roll.Log.IsEmpty || known.Roll.Unload is not null
            ? Not($"{known.Roll.Name.Value} has a log, which would go with it.", "Strike the entries of its log first.")
        : known.Roll.Place.File.StartsWith(Rolls, StringComparison.Ordinal)
            ? new RecordChange(
                LineDeed.Struck,
                known.Roll.Name.Value,
                new ChangedFile(known.Roll.Place.File, _files.TextOf(known.Roll.Place.File), null)
            )
        : Not($"{known.Roll.Name.Value} is in a list of rolls.", $"Take it out of {known.Roll.Place.File} by hand.");

    RecordChange Amend(NumberedEntry known, RollText text) =>
        known.Entry is { } entry
            ? Edit(
                LineDeed.Amended,
                known.Roll,
                text,
                new ChangedEntry(entry.Place, Instead(Named(_said.Keys), text.KeysOf(entry.Place), entry.Word))
            )
            : Edit(LineDeed.Amended, known.Roll, text, [.. Parts(known, Named(_said.Keys))]);

    // The entry becomes what its line says now: what the line no longer says goes.
    // Keys kept from the take before stay: that take may be another by now.
    RecordChange Say(NumberedEntry known, RollText text)
    {
        var keys = WithLine([.. _said.Keys.Where(k => !_said.TakenOver.Contains(k.Key))]);
        if (known.Entry is not { } entry)
        {
            return
                (known.Part == RollPart.Load) != (_said.Verb == LineVerb.Load)
                || (known.Part == RollPart.Unload) != (_said.Verb == LineVerb.Unload)
                ? Not(
                    $"#{_said.Number} is how {known.Roll.Name.Value} was {(known.Part == RollPart.Load ? "loaded" : "taken out")}.",
                    "Strike it first, or give the line another number."
                )
                : Edit(LineDeed.Amended, known.Roll, text, [.. Parts(known, Only(keys, text.KeysOf(known.Part)))]);
        }

        if (_said.Verb is LineVerb.Load or LineVerb.Unload)
        {
            return Not($"#{_said.Number} is an entry of the log of {known.Roll.Name.Value}.", "Give the line another number.");
        }

        var word = WordOf(_said.Verb);
        if (word == entry.Word)
        {
            var written = text.KeysOf(entry.Place);
            var dates = written.Where(w => w.Key == TakeKeyNames.On || w.Key == TakeKeyNames.Day).Select(w => w.Key).ToList();
            return Edit(
                LineDeed.Amended,
                known.Roll,
                text,
                new ChangedEntry(entry.Place, [.. Only(keys, written).Where(k => !(k.Values.IsEmpty && dates.Contains(k.Key)))])
            );
        }

        var at = known.Roll.Log.IndexOf(entry);
        return Edit(
            LineDeed.Amended,
            known.Roll,
            text,
            new AddedEntry(at == 0 ? null : known.Roll.Log[at - 1].Place, word, keys),
            new RemovedEntry(entry.Place)
        );
    }

    static IEnumerable<RollChange> Parts(NumberedEntry known, ImmutableArray<KeyValue> keys)
    {
        if (known.Part == RollPart.Unload)
        {
            foreach (var part in PartsOfUnload(keys))
            {
                yield return part;
            }

            yield break;
        }

        var ofRoll = known.Part == RollPart.Load ? keys.Where(k => EntryTables.IsOfRoll(k.Key)).ToImmutableArray() : [];
        if (!ofRoll.IsEmpty)
        {
            yield return new ChangedPart(RollPart.Roll, ofRoll);
        }

        yield return new ChangedPart(known.Part, [.. keys.Where(k => !ofRoll.Contains(k))]);
    }

    // The boxes of the sheet have a map of their own.
    static IEnumerable<RollChange> PartsOfUnload(ImmutableArray<KeyValue> keys)
    {
        var boxes = keys.Where(k => EntryTables.TotalsKeyOf(k.Key) is not null).ToImmutableArray();
        if (boxes.Length < keys.Length)
        {
            yield return new ChangedPart(RollPart.Unload, [.. keys.Where(k => !boxes.Contains(k))]);
        }

        if (!boxes.IsEmpty)
        {
            yield return new ChangedPart(RollPart.Totals, [.. boxes.Select(b => new KeyValue(EntryTables.TotalsKeyOf(b.Key)!, b.Values))]);
        }
    }

    ImmutableArray<KeyValue> Only(ImmutableArray<KeyValue> keys, ImmutableArray<WrittenKey> written) =>
        [
            .. keys,
            .. written.Where(w => keys.All(k => k.Key != w.Key) && !_said.TakenOver.Contains(w.Key)).Select(w => KeyValue.Without(w.Key)),
        ];

    // What was not noted goes.
    ImmutableArray<KeyValue> Named(ImmutableArray<KeyValue> keys) => [.. keys, .. _said.NotNoted.Select(KeyValue.Without)];

    // A key replaces the written one that says the same in another way.
    static ImmutableArray<KeyValue> Instead(ImmutableArray<KeyValue> keys, ImmutableArray<WrittenKey> written, string word)
    {
        if (EntryTables.OfLog.FirstOrDefault(t => t.Word == word) is not { } table)
        {
            return keys;
        }

        var pairs = table.NotBoth.Concat(table.Either is [var one, var other] ? [(one, other)] : []);
        return
        [
            .. keys,
            .. from pair in pairs.SelectMany(p => new[] { (Said: p.Item1, Other: p.Item2), (Said: p.Item2, Other: p.Item1) })
            where keys.Any(k => k.Key == pair.Said && !k.Values.IsEmpty) && written.Any(w => w.Key == pair.Other)
            select KeyValue.Without(pair.Other),
        ];
    }

    ImmutableArray<KeyValue> WithLine(ImmutableArray<KeyValue> keys) => _said.LineKey is { } line ? keys.Add(line) : keys;

    RollText? Open(Roll roll) => _files.TextOf(roll.Place.File) is { } text ? RollText.Open(roll.Place.File, text, roll.Place) : null;

    RecordChange Unwritable(Roll roll) =>
        Not(
            $"{roll.Name.Value} cannot be written into: {roll.Place.File} has errors.",
            "Correct them first: spoolbook check says what is wrong."
        );

    RecordChange Edit(LineDeed deed, Roll roll, RollText text, params ImmutableArray<RollChange> changes)
    {
        var edited = text.Change(changes);
        var file = roll.Place.File;
        return edited.Fault is { } fault
            ? RecordChange.Not(roll.Name.Value, fault.Place.ToString(), fault.Message, fault.Help)
            : new RecordChange(deed, roll.Name.Value, new ChangedFile(file, _files.TextOf(file), edited.Text))
            {
                Entry = Named(roll, changes),
                Remark = deed == LineDeed.Amended ? RemarkOf(roll, changes) : null,
            };
    }

    // An entry of another kind in the old one's place has its remark too.
    static ChangedRemark? RemarkOf(Roll roll, ImmutableArray<RollChange> changes)
    {
        var changed = changes.OfType<ChangedEntry>().FirstOrDefault();
        var place = changed?.Entry ?? changes.OfType<RemovedEntry>().FirstOrDefault()?.Entry;
        var keys = changed?.Keys ?? changes.OfType<AddedEntry>().FirstOrDefault()?.Keys ?? [];
        if (place is not { } at || (changed is not null && keys.All(k => k.Key != Note)))
        {
            return null;
        }

        var was = roll.Log.First(e => e.Place == at).Note?.Value;
        var now = keys.FirstOrDefault(k => k.Key == Note) is { Values: [var note, ..] } ? note : null;
        return was == now ? null : new ChangedRemark(was, now);
    }

    static string? Named(Roll roll, ImmutableArray<RollChange> changes)
    {
        foreach (var change in changes)
        {
            var place =
                change is ChangedEntry { Entry: var changed } ? changed
                : change is RemovedEntry { Entry: var removed } ? removed
                : (Place?)null;
            if (place is { } at && roll.Log.First(e => e.Place == at) is var entry)
            {
                return (entry as Take)?.Slate ?? entry.Word;
            }
        }

        return changes.Any(c => c is RemovedUnload or ChangedPart { Part: RollPart.Unload }) ? EntryTables.Unload.Word
            : changes.Any(c => c is ChangedPart { Part: RollPart.Totals }) ? "totals"
            : changes.Any(c => c is ChangedPart) ? EntryTables.Load.Word
            : null;
    }

    // The lines' day, where the sheet alone would put the entry on another.
    DateOnly? Dated(Roll roll)
    {
        if (!_said[TakeKeyNames.On].IsEmpty || !_said[TakeKeyNames.Day].IsEmpty)
        {
            return null;
        }

        var hour = _said["at"] is [var at] && TimeOnly.TryParse(at, CultureInfo.InvariantCulture, out var time) ? time : (TimeOnly?)null;
        var entry = new Remark(default) { At = hour is { } known ? new Located<TimeOnly>(known, default) : null };
        var moment = RollWalk.Of(roll).EndOfLog.Meet(entry);
        var isKnown = moment.Day == _day.Day || (moment.When is { } when && DateOnly.FromDateTime(when) == _day.Day);
        return isKnown || !IsLinesDay(moment) || (hour is null && _said.Verb != LineVerb.Take) ? null : _day.Day;
    }

    // Whether an entry is of the lines' day and not of the day that the log is in.
    bool IsLinesDay(Moment moment) =>
        _day.IsSaid || (_day.Day > moment.Day && _day.Day.DayNumber - moment.Day.DayNumber <= MostDaysInCamera);

    // A time alone leaves the date as it was.
    ImmutableArray<KeyValue> OnItsDate(Unload unload, ImmutableArray<KeyValue> keys) =>
        !HasDate
        && keys.FirstOrDefault(k => k.Key == TakeKeyNames.On) is { Values: [var text] } on
        && DateTime.TryParse(text, CultureInfo.InvariantCulture, out var when)
            ? keys.Replace(on, Moment(on.Key, unload.On.Value.Date + when.TimeOfDay))
            : keys;

    bool HasDate => Date().IsMatch(_said.Text.Text);

    static KeyValue Moment(string key, DateTime when) =>
        new(key, when.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture));

    // A time alone is on the lines' day, and after midnight on the next.
    ImmutableArray<KeyValue> AfterMidnight(Roll roll, ImmutableArray<KeyValue> keys)
    {
        var on = keys.FirstOrDefault(k => k.Key == TakeKeyNames.On);
        return
            on is { Values: [var text] }
            && !HasDate
            && DateTime.TryParse(text, CultureInfo.InvariantCulture, out var when)
            && RollWalk.Of(roll).EndOfLog.Latest is { } latest
            && when < latest
            && when.AddDays(1) - latest < TimeSpan.FromHours(12)
            ? keys.Replace(on, Moment(on.Key, when.AddDays(1)))
            : keys;
    }

    static string WordOf(LineVerb verb) =>
        (
            verb switch
            {
                LineVerb.Take => EntryTables.Take,
                LineVerb.Wind => EntryTables.Wind,
                LineVerb.Rewind => EntryTables.Rewind,
                LineVerb.RunOff => EntryTables.RunOff,
                LineVerb.Fog => EntryTables.Fog,
                LineVerb.Reload => EntryTables.Reload,
                _ => EntryTables.Remark,
            }
        ).Word;

    [GeneratedRegex(@"[0-9]{4}-[0-9]{2}-[0-9]{2}", RegexOptions.ExplicitCapture)]
    private static partial Regex Date();
}
