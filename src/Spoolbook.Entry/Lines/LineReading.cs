using System.Collections.Immutable;
using Spoolbook.Reading.Editing;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Entry.Lines;

/// <summary>Reads what follows the verb and the slate of one line, and checks that it fits together.</summary>
/// <param name="words">The words after verb and slate.</param>
/// <param name="slate">The keys of the slate; empty where the line has none.</param>
/// <param name="from">Where the words begin.</param>
sealed class LineReading(
    LineText line,
    ImmutableArray<LineWord> words,
    VerbGrammar grammar,
    RollSoFar? roll,
    LineContext context,
    ImmutableArray<KeyValue> slate,
    int from
)
{
    readonly LineFindings _findings = new(line, roll?.Name) { Grammar = grammar };
    readonly LineTokens _tokens = new(
        line,
        words,
        grammar,
        roll,
        context,
        !slate.IsEmpty,
        new LineFindings(line, roll?.Name) { Grammar = grammar }
    );
    readonly Dictionary<string, ImmutableArray<string>> _values = new(StringComparer.Ordinal);
    readonly Dictionary<string, LineWord> _said = new(StringComparer.Ordinal);
    readonly List<string> _notNoted = [];
    readonly List<string> _takenOver = [];
    string? _date;
    string? _clock;

    // Where the line can take a missing token.
    int _end = from;

    /// <summary>The keys, in the order they are written in.</summary>
    public ImmutableArray<KeyValue> Keys =>
        [.. from key in grammar.Table.Keys where _values.ContainsKey(key.Name) select new KeyValue(key.Name, _values[key.Name])];

    public ImmutableArray<string> NotNoted => [.. _notNoted];

    public ImmutableArray<string> TakenOver => [.. _takenOver];

    /// <returns>What is wrong with the line; null where nothing is.</returns>
    public Finding? Read()
    {
        foreach (var key in slate)
        {
            _values[key.Key] = key.Values;
        }

        return (grammar.Verb == LineVerb.Note ? Note() : Tokens(0)) ?? Moment() ?? Missing() ?? TakeOver();
    }

    Finding? Tokens(int at)
    {
        var (remark, refusal) = (-1, (Finding?)null);
        while (at < words.Length && !IsColonAlone(words[at]))
        {
            var token = _tokens.Read(at, _said, out var doubt);
            if (token is null)
            {
                refusal ??= doubt ?? Misspelt(at);
                remark = remark < 0 ? at : remark;
                at++;
                continue;
            }

            if (remark >= 0)
            {
                return refusal ?? Unread(remark);
            }

            if (Take(token, at) is { } fault)
            {
                return fault;
            }

            _end = words[token.Next - 1].HasColon ? words[token.Next - 1].End - 1 : words[token.Next - 1].End;
            if (token.BeginsRemark)
            {
                return Remark(words[token.Next].Start, words[at]);
            }

            at = token.Next;
        }

        return remark < 0
            ? AfterColon()
            : refusal ?? (grammar.HasRemark ? Doubted(remark) : Unread(remark)) ?? Remark(words[remark].Start, words[remark]);
    }

    static bool IsColonAlone(LineWord word) => word is { HasColon: true, IsQuoted: false, Text: "" };

    Finding? AfterColon() => words is [.., { HasColon: true } last] ? Remark(last.End, last) : null;

    Finding? Misspelt(int at) => _tokens.NearestKey(at) is { } near && !words[at].Is(near) ? _findings.Unreadable(words[at], near) : null;

    Finding Unread(int at) => _findings.Unreadable(words[at], _tokens.NearestWord(words[at].Text));

    // What begins with a figure was hardly meant as a remark, and neither was a single word that is nearly one of ours.
    Finding? Doubted(int remark)
    {
        var word = words[remark];
        if (IsLoneLetter(remark))
        {
            return _said.ContainsKey("mark") ? _findings.Unreadable(word, null) : _findings.NotAMark(word);
        }

        return !word.IsQuoted && word.HasFigure ? _findings.Unreadable(word, _tokens.NearestWord(word.Text))
            : !word.IsQuoted && remark + 1 == words.Length && _tokens.NearestWord(word.Text) is { } near ? _findings.Unreadable(word, near)
            : null;
    }

    // A mark that missed its key.
    bool IsLoneLetter(int at) =>
        grammar.Verb is LineVerb.Take or LineVerb.Amend
        && at + 1 == words.Length
        && words[at] is { IsQuoted: false, Text: [var letter] }
        && char.IsLetter(letter);

    // A note is free words after an optional time. It has keys only where a colon or quotation marks show where its words begin.
    Finding? Note()
    {
        var at = 0;
        if (words is [{ IsQuoted: false } first, ..] && LineValues.Clock(first.Text) is { } clock)
        {
            (_values["at"], _said["at"], _end) = ([clock], first, first.End);
            at = 1;
        }

        if (at < words.Length && IsAllTokens(at) && words.Any(w => w.IsQuoted || w.HasColon))
        {
            return Tokens(at);
        }

        return at == words.Length ? AfterColon() : Remark(words[at].Start, words[at]);
    }

    bool IsAllTokens(int at)
    {
        while (at < words.Length && !IsColonAlone(words[at]))
        {
            if (_tokens.Read(at, _said, out _) is not { Fault: null, BeginsRemark: false } token)
            {
                return false;
            }

            at = token.Next;
        }

        return true;
    }

    Finding? Take(LineToken token, int at)
    {
        if (token.Fault is not null)
        {
            return token.Fault;
        }

        if (token.NotNoted is { } none)
        {
            if (_said.TryGetValue(none, out var before))
            {
                return _findings.SaidTwice(words[at], none, before);
            }

            _said[none] = words[at];
            _notNoted.Add(none);
        }

        if ((token.Date is not null && _date is not null) || (token.Clock is not null && _clock is not null) || IsMomentTwice(token))
        {
            return _findings.SaidTwice(words[at], "on", _said["on"]);
        }

        if (token.Date is not null || token.Clock is not null)
        {
            (_date, _clock) = (token.Date ?? _date, token.Clock ?? _clock);
            _said.TryAdd("on", words[at]);
        }

        foreach (var key in token.Keys)
        {
            if (Put(key, words[at]) is { } fault)
            {
                return fault;
            }
        }

        return null;
    }

    bool IsMomentTwice(LineToken token) =>
        token.Date is not null || token.Clock is not null ? _values.ContainsKey("on")
        : _date is not null || _clock is not null ? token.Keys.Any(k => k.Key == "on")
        : false;

    Finding? Put(KeyValue key, LineWord word)
    {
        if (_said.TryGetValue(key.Key, out var before))
        {
            var adds = grammar.Table.Find(key.Key) is { Many: true } && !_notNoted.Contains(key.Key);
            if (!adds || key.Values.Any(v => _values[key.Key].Contains(v)))
            {
                return _findings.SaidTwice(word, key.Key, before);
            }

            _values[key.Key] = [.. _values[key.Key], .. key.Values];
            return null;
        }

        foreach (var other in Instead(key.Key))
        {
            if (_said.TryGetValue(other, out var said))
            {
                return _findings.SaidTwice(word, other, said);
            }
        }

        (_values[key.Key], _said[key.Key]) = (key.Values, word);
        return null;
    }

    IEnumerable<string> Instead(string key)
    {
        if (grammar.Table.Either.Contains(key))
        {
            foreach (var other in grammar.Table.Either)
            {
                if (other != key)
                {
                    yield return other;
                }
            }
        }

        foreach (var (one, other) in grammar.Table.NotBoth)
        {
            if (key == one || key == other)
            {
                yield return key == one ? other : one;
            }
        }
    }

    Finding? Remark(int start, LineWord word)
    {
        var text = line.Text[start..].Trim();
        if (
            LineWords.Next(text, 0) is { IsQuoted: true, IsBroken: false, HasColon: false } quoted
            && quoted.End == text.Length
            && text[^1] == '"'
        )
        {
            text = quoted.Text;
        }

        return text.Length == 0 ? null
            : !grammar.HasRemark ? _findings.Unreadable(LineWords.Next(line.Text, start) ?? word, null)
            : Put(new KeyValue("note", text), word);
    }

    Finding? Moment()
    {
        if (_date is null && _clock is null)
        {
            return null;
        }

        _values["on"] = [$"{_date ?? LineValues.Text(context.Day)} {_clock}"];
        return _clock is null ? _findings.Needs(Sentence.Of("line/needs.message.time", ("date", _date!)), _end, "9:15") : null;
    }

    Finding? Missing()
    {
        if (grammar.IsPart)
        {
            return _values.Count == slate.Length && _notNoted.Count == 0
                ? _findings.Needs(Sentence.Of("line/needs.message.change"), _end, "NG")
                : null;
        }

        if (grammar.Verb == LineVerb.Note && _values.Count == 0)
        {
            return _findings.Needs(Sentence.Of("line/needs.message.note"), line.Text.Length, "Clouds");
        }

        foreach (var key in grammar.Table.Keys)
        {
            if (key.Required && !_values.ContainsKey(key.Name))
            {
                return _findings.Needs(
                    key.Name == "mark" ? Sentence.Of("line/needs.message.mark") : Sentence.Of("line/needs.message", ("key", key.Name)),
                    _end,
                    Example(key)
                );
            }
        }

        return grammar.Table.Either is [_, ..] either && !either.Any(_values.ContainsKey)
            ? _findings.Needs(Sentence.Of("line/needs.message", ("key", either[0])), _end, "to 70")
            : null;
    }

    static string Example(EntryKey key) =>
        key.Name switch
        {
            "mark" => "G",
            "on" => "9:15",
            "to" => "to 70",
            _ => $"{key.Name} {key.Example}",
        };

    // The next take keeps lens, stop and filter of the one before, unless its line says otherwise; focus only where it is the same
    // shot, since for another one the tape is laid anew.
    Finding? TakeOver()
    {
        if (grammar.Verb != LineVerb.Take)
        {
            return null;
        }

        foreach (var before in roll?.LastTake ?? [])
        {
            if (IsKept(before.Key, IsSameShot) && !_values.ContainsKey(before.Key) && !_notNoted.Contains(before.Key))
            {
                _values[before.Key] = before.Values;
                _takenOver.Add(before.Key);
            }
        }

        if (
            roll is null or { LastTake.IsEmpty: true }
            && context.Lenses is [var only]
            && !_values.ContainsKey("lens")
            && !_notNoted.Contains("lens")
        )
        {
            _values["lens"] = [only];
            _takenOver.Add("lens");
        }

        return null;
    }

    bool IsSameShot => roll is not null && roll.IsShotOfLast(_values.GetValueOrDefault("scene", []), _values.GetValueOrDefault("shot", []));

    /// <summary>Whether a take keeps a key of the take before.</summary>
    /// <param name="isSameShot">Whether both are takes of one shot.</param>
    public static bool IsKept(string key, bool isSameShot) => key is "lens" or "stop" or "filter" || (key == "focus" && isSameShot);
}
