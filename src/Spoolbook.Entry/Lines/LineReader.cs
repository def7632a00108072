using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Reading.Editing;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Entry.Lines;

public sealed class LineReader
{
    readonly LineText _line;
    readonly LineContext _context;
    readonly ImmutableArray<LineWord> _words;
    readonly LineFindings _findings;
    string? _number;
    string? _digest;
    RollSoFar? _roll;
    LineWord? _rollSaid;

    LineReader(LineText line, LineContext context, ImmutableArray<LineWord> words)
    {
        (_line, _context, _words) = (line, context, words);
        _findings = new LineFindings(line, null);
    }

    /// <summary>What a line says, or why it cannot be written. An empty line or a comment says nothing.</summary>
    /// <param name="file">The name of its file in findings.</param>
    /// <param name="line">Its number there, from 1.</param>
    public static LineRead Read(string text, string file, int line, LineContext context)
    {
        var trimmed = text.Trim();
        return trimmed.Length == 0 || trimmed is "#" || trimmed.StartsWith("# ", StringComparison.Ordinal)
            ? new LineRead(null, null)
            : Begin(new LineText(file, line, text), context);
    }

    static LineRead Begin(LineText line, LineContext context)
    {
        // The number and the roll come first: a colon begins the remark only after them.
        var (at, number, roll) = (0, (LineWord?)null, (LineWord?)null);
        var first = LineWords.Next(line.Text, at);
        if (first is { IsQuoted: false, Text: ['#', ..] })
        {
            (number, at) = (first, first.Value.End);
            first = LineWords.Next(line.Text, at);
        }

        if (first is { HasColon: true } named && named.Text.Length > 0 && (named.IsQuoted || (!IsVerb(named) && !named.Text.Contains('/'))))
        {
            (roll, at) = (first, named.End);
        }

        var words = ImmutableArray.CreateBuilder<LineWord>();
        while (LineWords.Next(line.Text, at) is { } word)
        {
            words.Add(word);
            at = word.End;
            if (word.HasColon)
            {
                break;
            }
        }

        var reader = new LineReader(line, context, words.ToImmutable()) { _rollSaid = roll };
        if (number is { } said)
        {
            if (!IsNumber(said.Text))
            {
                return Refused(reader._findings.NotANumber(said));
            }

            (reader._number, reader._digest) = (said.Text[1..], LineText.DigestOf(line.Text[said.End..]));
        }

        return reader.Read();
    }

    static bool IsVerb(LineWord word) => word.Is("run") || word.Is("next") || LineGrammar.Verbs.Any(word.Is);

    // #K3-12: the device, and a count of its lines.
    static bool IsNumber(string text)
    {
        var hyphen = text.LastIndexOf('-');
        return hyphen > 1 && text[1..hyphen].All(char.IsAsciiLetterOrDigit) && LineValues.IsWhole(text[(hyphen + 1)..]);
    }

    static LineRead Refused(Finding finding) => new(null, finding);

    LineRead Read()
    {
        if (_words.IsEmpty)
        {
            return Refused(_findings.Needs(Sentence.Of("line/needs.message.verb"), Sentence.Of("line/unreadable.help.verb")));
        }

        var (verb, next) = Verb();
        if (verb is null)
        {
            return Refused(NotAVerb());
        }

        if (verb == LineVerb.Day)
        {
            return Day(next);
        }

        if (
            verb != LineVerb.Load
            && !(_rollSaid is null && verb == LineVerb.Strike && _number is not null && next == _words.Length)
            && FindRoll() is { } fault
        )
        {
            return Refused(fault);
        }

        return verb switch
        {
            LineVerb.Strike => Strike(next),
            LineVerb.Load => Load(next),
            LineVerb.Take or LineVerb.Amend => WithSlate(verb.Value, next),
            _ => Entry(verb.Value, next, [], null),
        };
    }

    (LineVerb? Verb, int Next) Verb()
    {
        foreach (var grammar in LineGrammar.All)
        {
            var i = 0;
            while (
                i < grammar.Words.Length
                && i < _words.Length
                && _words[i].Is(grammar.Words[i])
                && (!_words[i].HasColon || i + 1 == grammar.Words.Length)
            )
            {
                i++;
            }

            if (i == grammar.Words.Length)
            {
                return (grammar.Verb, i);
            }
        }

        var first = _words[0];
        return first.Is("run-off") ? (LineVerb.RunOff, 1)
            : first.Is("strike") ? (LineVerb.Strike, 1)
            : first.Is("day") ? (LineVerb.Day, 1)
            : IsSlate(0) ? (LineVerb.Take, 0)
            : (null, 0);
    }

    bool IsSlate(int at) =>
        at < _words.Length
        && !_words[at].IsQuoted
        && (
            _words[at].Text.Contains('/')
            || _words[at].Is("next")
            || (at + 1 < _words.Length && _words[at + 1].Is("next") && IsShotName(_words[at].Text))
        );

    static bool IsLength(string text) =>
        LineValues.IsNumber(text) || LineValues.IsFeetAndFrames(text) || LineValues.IsMeasure(text, "ft", "m", "fr");

    static bool IsShotName(string text) => text.Length > 0 && (char.IsAsciiDigit(text[0]) || text.Length == 1);

    Finding NotAVerb()
    {
        var first = _words[0];
        // "1A 4" is a slate that lacks its stroke.
        return first.Text is [>= '0' and <= '9', ..] && _words.Length > 1 && LineValues.IsWhole(_words[1].Text)
                ? _findings.NotASlate(first with { End = _words[1].End })
            : LineValues.Mark(first.Text) is not null && IsSlate(1) ? _findings.MarkFirst(first, _words[1], isAll: _words.Length == 2)
            : _findings.NotAVerb(first);
    }

    Finding? FindRoll()
    {
        if (_rollSaid is { } said)
        {
            var names = _context.Rolls.Select(r => r.Name).ToArray();
            _roll = LineNames.Find(said.Text, [.. names]) is { } name ? _context.RollNamed(name) : null;
            return _roll is null ? _findings.UnknownRoll(said, names) : null;
        }

        _roll = _context.Roll is { } usual ? _context.RollNamed(usual) : null;
        if (_roll is not null)
        {
            return null;
        }

        var open = _context.Open.ToArray();
        _roll = open is [var only] ? only : null;
        return open.Length switch
        {
            1 => null,
            0 when IsOfLast() && LastOut() is { } last => _findings.LastIsOut(last.Name, _words[0].Start),
            0 => _findings.Needs(Sentence.Of("line/needs.message.no-roll"), Sentence.Of("line/needs.help.no-roll")),
            _ => _findings.WhichRoll([.. open.Select(r => r.Name)], _words[0].Start),
        };
    }

    bool IsOfLast() => _words is [var verb, var last, ..] && (verb.Is("amend") || verb.Is("strike")) && last.Is("last");

    RollSoFar? LastOut() => _context.Rolls.Where(r => r.IsOut).MaxBy(r => r.Out);

    LineRead Day(int next)
    {
        if (_rollSaid is { } roll)
        {
            return Refused(_findings.NotOfOneRoll(roll));
        }

        if (next == _words.Length)
        {
            return Refused(
                _findings.Needs(Sentence.Of("line/needs.message", ("key", "date")), _words[0].End, LineValues.Text(_context.Day))
            );
        }

        return LineValues.Date(_words[next].Text) is { } day && next + 1 == _words.Length && !_words[next].HasColon
            ? new LineRead(Said(LineVerb.Day, [], [], null, []) with { Day = day }, null)
            : Refused(_findings.NotADay(LineValues.Date(_words[next].Text) is null ? _words[next] : _words[^1]));
    }

    // Nothing can follow, and no colon begins a remark.
    LineRead Strike(LineTarget? target, int next) =>
        next < _words.Length ? Refused(_findings.Unreadable(_words[next], null))
        : _words is [.., { HasColon: true } last] && LineWords.Next(_line.Text, last.End) is { } word
            ? Refused(_findings.Unreadable(word, null))
        : new LineRead(Said(LineVerb.Strike, [], [], target, []), null);

    LineRead Strike(int next)
    {
        if (next == _words.Length)
        {
            return _number is not null
                ? Strike(null, next)
                : Refused(_findings.Needs(Sentence.Of("line/needs.message.which"), _words[next - 1].End, "last"));
        }

        return _words[next].Is("last") ? Strike(new LineTarget(null), next + 1) : Targeted(LineVerb.Strike, next);
    }

    LineRead Load(int next)
    {
        if (_rollSaid is null && (next == _words.Length || _words[next].IsBroken))
        {
            return Refused(_findings.Needs(Sentence.Of("line/needs.message", ("key", "roll")), _words[next - 1].End, "R04"));
        }

        var named = _rollSaid ?? _words[next];
        var roll = named.Text;
        _roll = new RollSoFar(roll);
        return Entry(LineVerb.Load, _rollSaid is null ? next + 1 : next, [new KeyValue("roll", roll)], null);
    }

    LineRead WithSlate(LineVerb verb, int next)
    {
        if (verb == LineVerb.Amend)
        {
            return next < _words.Length && _words[next].Is("last")
                ? TakeOrBox(next + 1) is { } doubt
                    ? Refused(doubt)
                    : Entry(verb, next + 1, [], new LineTarget(null), LineGrammar.AmendmentOf(_roll?.Last ?? LineVerb.Take))
                : Targeted(verb, next);
        }

        if (!IsSlate(next))
        {
            // By the names of the keys: take scene 12A shot B take 3.
            return Entry(verb, next, [], null);
        }

        return Slate(next, out var slate, out var after) is { } fault ? Refused(fault) : Entry(verb, after, slate, null);
    }

    // "amend last good 56" beside a roll that just came out: a take's mark and its end, or a box of that roll's sheet.
    Finding? TakeOrBox(int next)
    {
        var unloaded = _rollSaid is null ? LastOut() : null;
        var at = next;
        while (at + 1 < _words.Length && !(LineValues.Mark(_words[at].Text) is not null && IsLength(_words[at + 1].Text)))
        {
            at++;
        }

        return unloaded is null || _roll?.Last != LineVerb.Take || at + 1 >= _words.Length
            ? null
            : _findings.TakeOrBox(_words[at] with { End = _words[at + 1].End }, _words[at], _words[at + 1], unloaded.Name, _words[0].Start);
    }

    LineRead Targeted(LineVerb verb, int next)
    {
        if (!IsSlate(next))
        {
            return ByNames(verb, next);
        }

        if (Slate(next, out var slate, out var after) is { } fault)
        {
            return Refused(fault);
        }

        if (FindTake(SlateOf(slate), _words[next]) is { } none)
        {
            return Refused(none);
        }

        var target = new LineTarget(SlateOf(slate));
        return verb == LineVerb.Amend ? Entry(verb, after, slate, target) : Strike(target, after);
    }

    // amend scene 12A shot B take 3 NG
    LineRead ByNames(LineVerb verb, int next)
    {
        var read = Entry(LineVerb.Amend, next, [], null);
        if (read.Said is not { } said)
        {
            return read;
        }

        if (verb == LineVerb.Strike && NotOfSlate(next) is { } word)
        {
            return Refused(_findings.Unreadable(word, null));
        }

        if (said["scene"] is not [_] || said["take"] is not [_])
        {
            return Refused(_findings.Needs(Sentence.Of("line/needs.message.which"), _words[next - 1].End, "1A/4"));
        }

        var slate = SlateOf(said.Keys);
        ImmutableArray<KeyValue> changes = [.. said.Keys.Where(k => !LineTokens.IsOfSlate(k.Key))];
        return FindTake(slate, _words[next]) is { } none ? Refused(none)
            : verb == LineVerb.Amend && changes.IsEmpty && said.NotNoted.IsEmpty
                ? Refused(_findings.Needs(Sentence.Of("line/needs.message.change"), _words[^1].End, "NG"))
            : new LineRead(said with { Verb = verb, Keys = changes, Target = new LineTarget(slate) }, null);
    }

    // Each part of the slate is its name and a value.
    LineWord? NotOfSlate(int next)
    {
        while (next < _words.Length)
        {
            if (!LineTokens.IsOfSlate(_words[next].Text.ToLowerInvariant()))
            {
                return _words[next];
            }

            next += 2;
        }

        return _words is [.., { HasColon: true } last] ? LineWords.Next(_line.Text, last.End) : null;
    }

    static string SlateOf(ImmutableArray<KeyValue> keys)
    {
        var (scene, shot, take) = ("", "", "");
        foreach (var key in keys)
        {
            switch (key.Key)
            {
                case "scene":
                    scene = key.Values[0];
                    break;
                case "shot":
                    shot = key.Values[0];
                    break;
                case "take":
                    take = key.Values[0];
                    break;
            }
        }

        return $"{scene}{shot}/{take}";
    }

    Finding? FindTake(string slate, LineWord word) =>
        _roll is null || _roll.Slates.Contains(slate) ? null : _findings.UnknownTake(word, _roll.Name, [.. _roll.Slates]);

    Finding? Slate(int at, out ImmutableArray<KeyValue> keys, out int next)
    {
        (keys, next) = ([], at + 1);
        var word = _words[at];
        if (word.Is("next"))
        {
            if (_roll?.LastTake is not [_, ..] last)
            {
                return _findings.Needs(
                    Sentence.Of("line/needs.message.before", ("roll", _roll?.Name ?? "")),
                    Sentence.Of("line/unreadable.help.slate")
                );
            }

            string? One(string key) => last.FirstOrDefault(k => k.Key == key) is { Values: [var one] } ? one : null;
            keys = Keys(One("scene")!, One("shot"), NextOf(One("scene")!, One("shot")));
            return null;
        }

        var slash = word.Text.LastIndexOf('/');
        var (name, number) = slash < 0 ? (word.Text, "") : (word.Text[..slash], word.Text[(slash + 1)..]);
        if (
            number.Length == 0
            && !word.HasColon
            && next < _words.Length
            && (_words[next].Is("next") || (slash >= 0 && LineValues.IsWhole(_words[next].Text)))
        )
        {
            number = _words[next].Text;
            next++;
        }

        var isNext = number.Equals("next", StringComparison.OrdinalIgnoreCase);
        if (name.Length == 0 || (!isNext && !(LineValues.IsWhole(number) && number.Length <= 6 && number.Any(c => c != '0'))))
        {
            return _findings.NotASlate(word);
        }

        var readings = SlateReading.Of(name, _context);
        var (scene, shot) = readings[0];
        if (readings is [_, var (otherScene, otherShot), ..])
        {
            return _findings.TwoReadings(word, Spoken(scene, shot, number), Spoken(otherScene, otherShot, number));
        }

        keys = Keys(
            scene,
            shot,
            isNext ? NextOf(scene, shot) : int.Parse(number, CultureInfo.InvariantCulture).ToString(CultureInfo.InvariantCulture)
        );
        return null;
    }

    static string Spoken(string scene, string? shot, string number) =>
        shot is null ? $"take scene {scene} take {number}" : $"take scene {scene} shot {shot} take {number}";

    static ImmutableArray<KeyValue> Keys(string scene, string? shot, string number) =>
        shot is null
            ? [new KeyValue("scene", scene), new KeyValue("take", number)]
            : [new KeyValue("scene", scene), new KeyValue("shot", shot), new KeyValue("take", number)];

    string NextOf(string scene, string? shot)
    {
        var last = _context.Shots.FirstOrDefault(s => s.Scene == scene && s.Shot == shot)?.Last ?? 0;
        return (last + 1).ToString(CultureInfo.InvariantCulture);
    }

    LineRead Entry(LineVerb verb, int next, ImmutableArray<KeyValue> slate, LineTarget? target, VerbGrammar? grammar = null)
    {
        // A colon after the verb or the slate begins the remark at once.
        var after = next > 0 && next == _words.Length && _words[next - 1].HasColon ? _words[(next - 1)..] : _words[next..];
        var words = after.Length > 0 && next == _words.Length ? [after[0] with { Text = "", IsQuoted = false }] : after;
        var reading = new LineReading(
            _line,
            words,
            grammar ?? LineGrammar.Of(verb)!,
            _roll,
            _context,
            slate,
            next > 0 ? _words[next - 1].End - (_words[next - 1].HasColon ? 1 : 0) : 0
        );
        if (reading.Read() is { } refused)
        {
            return Refused(refused);
        }

        var keys =
            target is null || grammar is { Verb: not LineVerb.Amend }
                ? reading.Keys
                : [.. reading.Keys.Where(k => !LineTokens.IsOfSlate(k.Key))];
        return new LineRead(Said(verb, keys, reading.NotNoted, target, reading.TakenOver), null);
    }

    SaidLine Said(
        LineVerb verb,
        ImmutableArray<KeyValue> keys,
        ImmutableArray<string> notNoted,
        LineTarget? target,
        ImmutableArray<string> takenOver
    ) => new(verb, _number, _digest, _roll?.Name, keys, notNoted, target, _line) { TakenOver = takenOver };
}
