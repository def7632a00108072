using System.Collections.Immutable;
using System.Text;
using Spoolbook.Reading.Editing;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Entry.Lines;

/// <summary>Writes an entry as a line: as short as it can be read back, with a key written out where the short form cannot be.</summary>
public sealed class LineWriter
{
    // As every place names it; how a roll is loaded comes behind its name.
    static readonly ImmutableArray<string> _spoken = ["lot", "unit", "short-end-of", "body", "by", .. TakePart.All.Select(p => p.Key)];

    readonly VerbGrammar _grammar;
    readonly string? _roll;
    readonly ImmutableArray<KeyValue> _keys;
    readonly LineContext _before;

    // How far each key is written out: 0 as short as possible, 1 with its name, 2 in quotation marks too.
    readonly Dictionary<string, int> _lengths = new(StringComparer.Ordinal);

    // Where each key's token begins in the line.
    readonly List<(int Start, string Key)> _starts = [];

    LineWriter(VerbGrammar grammar, string? roll, ImmutableArray<KeyValue> keys, LineContext before)
    {
        (_grammar, _roll, _keys, _before) = (grammar, roll, keys, before);
    }

    /// <param name="roll">The roll it is about.</param>
    /// <param name="keys">Its keys as in the file; for a load those of the roll too.</param>
    /// <param name="before">What is known before it.</param>
    public static string Write(LineVerb verb, string? roll, IEnumerable<KeyValue> keys, LineContext before)
    {
        var grammar = LineGrammar.Of(verb) is { IsPart: false } entry
            ? entry
            : throw new ArgumentOutOfRangeException(nameof(verb), "Only an entry has a line.");
        return new LineWriter(grammar, roll, [.. keys.Where(k => !k.Values.IsEmpty)], before).Write();
    }

    string Write()
    {
        // Each round writes out at least one more key, so this ends.
        var line = Compose();
        while (Differing(line) is [_, ..] differing)
        {
            var isLonger = false;
            foreach (var key in differing)
            {
                var length = _lengths.GetValueOrDefault(key);
                isLonger |= length < 2;
                _lengths[key] = Math.Min(2, length + 1);
            }

            if (!isLonger && !WriteAllOut())
            {
                return line;
            }

            line = Compose();
        }

        return line;
    }

    bool WriteAllOut()
    {
        var isLonger = false;
        foreach (var key in _keys.Select(k => k.Key).Append("slate"))
        {
            isLonger |= _lengths.GetValueOrDefault(key) < 2;
            _lengths[key] = 2;
        }

        return isLonger;
    }

    // The keys that the line drops or changes; in a refused line the key it is refused for.
    List<string> Differing(string line)
    {
        var read = LineReader.Read(line, "", 1, _before);
        if (read.Said is not { } said)
        {
            var at = (read.Refused?.Place.Column ?? 1) - 1;
            var key = _starts.LastOrDefault(s => s.Start <= at).Key;
            return [key ?? "slate"];
        }

        var differing = new List<string>();
        foreach (var key in _keys)
        {
            if (!Same(said[key.Key], key.Values))
            {
                differing.Add(LineTokens.IsOfSlate(key.Key) && _grammar.Verb == LineVerb.Take ? "slate" : key.Key);
            }
        }

        foreach (var more in said.Keys)
        {
            if (Own(more.Key).IsEmpty)
            {
                differing.Add(more.Key);
            }
        }

        return differing;
    }

    static bool Same(ImmutableArray<string> one, ImmutableArray<string> other) => one.AsSpan().SequenceEqual(other.AsSpan());

    ImmutableArray<string> Own(string key)
    {
        foreach (var own in _keys)
        {
            if (own.Key == key)
            {
                return own.Values;
            }
        }

        return [];
    }

    string Compose()
    {
        _starts.Clear();
        var line = new StringBuilder();
        if (_grammar.Verb != LineVerb.Load && _roll is not null && !IsTheOnlyRoll())
        {
            line.Append(IsPlain(_roll) ? _roll : LineWords.Quote(_roll)).Append(": ");
        }

        line.Append(Opening());
        var remark = "";
        foreach (var (key, values) in InOrder())
        {
            var token = Token(key, values);
            if (key.Name == "note" && _lengths.GetValueOrDefault("note") < 2)
            {
                remark = values[0];
            }
            else if (token.Length > 0)
            {
                _starts.Add((line.Length + 1, key.Name));
                line.Append(' ').Append(token);
            }
        }

        foreach (var key in Absent())
        {
            line.Append(key == "filter" ? " no filter" : $" {key} -");
        }

        if (remark.Length > 0)
        {
            _starts.Add((line.Length, "note"));
            line.Append(_lengths.GetValueOrDefault("note") == 0 ? " " : ": ").Append(remark);
        }

        return line.ToString();
    }

    bool IsTheOnlyRoll() => _before.Roll == _roll || (_before.Roll is null && _before.Open.ToArray() is [var only] && only.Name == _roll);

    string Opening()
    {
        if (_grammar.Verb == LineVerb.Load)
        {
            var roll = Own("roll") is [var said] ? said : _roll ?? "";
            return $"load {(IsPlain(roll) ? roll : LineWords.Quote(roll))}";
        }

        if (_grammar.Verb != LineVerb.Take)
        {
            return _grammar.Word;
        }

        var (scene, shot, take) = (Own("scene"), Own("shot"), Own("take"));
        return
            _lengths.GetValueOrDefault("slate") == 0
            && scene is [var first]
            && take is [var number]
            && IsPlain(first + (shot is [var letter] ? letter : ""))
            ? $"{first}{(shot is [var one] ? one : "")}/{number}"
            : "take";
    }

    IEnumerable<(EntryKey Key, ImmutableArray<string> Values)> InOrder()
    {
        var isSlate = _grammar.Verb == LineVerb.Take && Opening() != _grammar.Word;
        return _grammar
            .Table.Keys.Select(k => (Key: k, Values: Own(k.Name)))
            .Where(k => !k.Values.IsEmpty && k.Key.Name != "roll" && !(isSlate && LineTokens.IsOfSlate(k.Key.Name)))
            .OrderBy(k => _spoken.IndexOf(k.Key.Name) is var place and >= 0 ? place : _spoken.Length);
    }

    // Keys that the next take would keep and that this one does not have.
    IEnumerable<string> Absent() =>
        _grammar.Verb != LineVerb.Take ? []
        : Roll is not { LastTake: [_, ..] last }
            ? _before.Lenses.Length == 1 && Own("lens").IsEmpty ? ["lens"]
                : []
        : from key in last where LineReading.IsKept(key.Key, IsSameShot) && Own(key.Key).IsEmpty select key.Key;

    bool IsSameShot => Roll is { } roll && roll.IsShotOfLast(Own("scene"), Own("shot"));

    RollSoFar? Roll => _roll is null ? null : _before.RollNamed(_roll);

    string Token(EntryKey key, ImmutableArray<string> values) =>
        _lengths.GetValueOrDefault(key.Name) switch
        {
            0 => Short(key, values),
            1 => Named(key, values),
            _ => string.Join(' ', values.Select(v => $"{key.Name} {LineWords.Quote(v)}")),
        };

    string Short(EntryKey key, ImmutableArray<string> values)
    {
        if (_grammar.Verb == LineVerb.Take && LineReading.IsKept(key.Name, IsSameShot) && IsKept(key.Name, values))
        {
            return "";
        }

        if (key.Kind == ValueKind.YesNo && values is ["yes"])
        {
            return key.Name == "counter-zeroed" ? "zeroed" : key.Name;
        }

        var value = values[0];
        return Form(key.Name) switch
        {
            LineForm.Speed => value + "fps",
            LineForm.Stop => value.StartsWith('T') ? value : "f" + value,
            LineForm.Distance => value.Replace(" ", "", StringComparison.Ordinal),
            LineForm.Clock => Clock(value),
            LineForm.Moment => Moment(value),
            LineForm.Mark => MarkLetter(value),
            LineForm.Position when _grammar.Verb == LineVerb.Fog => Length(value),
            LineForm.Position => _grammar.Verb == LineVerb.Take ? $"to {Length(value)}" : Length(value),
            LineForm.Duration when LineValues.IsMeasure(value, "s") => value,
            LineForm.Duration => Named(key, values),
            LineForm.Left => $"{Length(value)} left",
            LineForm.Unit => Own("unit") is [var unit] ? $"{value}/{unit}" : value,
            LineForm.Name when key.Name == "body" => $"in {value}",
            LineForm.Name when key.Name == "by" => $"by {value}",
            null when key.Name == "unit" && _lengths.GetValueOrDefault("lot") == 0 && !Own("lot").IsEmpty => "",
            null => Named(key, values),
            _ => string.Join(' ', values),
        };
    }

    LineForm? Form(string key)
    {
        foreach (var rule in _grammar.Forms)
        {
            if (rule.Key == key)
            {
                return rule.Form;
            }
        }

        return null;
    }

    bool IsKept(string key, ImmutableArray<string> values)
    {
        if (Roll is not { LastTake: [_, ..] last })
        {
            return key == "lens" && _before.Lenses is [var only] && values is [var lens] && lens == only;
        }

        foreach (var before in last)
        {
            if (before.Key == key)
            {
                return Same(before.Values, values);
            }
        }

        return false;
    }

    string Named(EntryKey key, ImmutableArray<string> values)
    {
        var value = string.Join(
            ',',
            values.Select(v =>
                key.Kind switch
                {
                    ValueKind.Length => Length(v),
                    ValueKind.Clock => Clock(v),
                    _ => v,
                }
            )
        );
        return IsPlain(value) ? $"{key.Name} {value}" : string.Join(' ', values.Select(v => $"{key.Name} {LineWords.Quote(v)}"));
    }

    // A line would misread a blank, a quotation mark at the beginning, or a sign at the end.
    static bool IsPlain(string text) =>
        text.Length > 0 && !text.Any(char.IsWhiteSpace) && text[0] is not ('"' or '#') && text[^1] is not (':' or ',' or ';');

    string Length(string value) =>
        _before.Units == LengthUnit.Metres
            ? LineValues.IsMeasure(value, "m")
                ? value[..^1]
                : value
            : value.EndsWith("+00", StringComparison.Ordinal)
                ? value[..^3]
                : value;

    static string Clock(string value) => value is ['0', >= '0' and <= '9', ':', ..] ? value[1..] : value;

    string Moment(string value)
    {
        var blank = value.IndexOf(' ', StringComparison.Ordinal);
        return blank > 0
            ? value[..blank] == LineValues.Text(_before.Day)
                ? Clock(value[(blank + 1)..])
                : $"{value[..blank]} {Clock(value[(blank + 1)..])}"
            : $"on {value}";
    }

    static string MarkLetter(string value) =>
        value switch
        {
            "good" => "G",
            "hold" => "H",
            "ng" => "NG",
            "test" => "T",
            _ => $"mark {value}",
        };
}
