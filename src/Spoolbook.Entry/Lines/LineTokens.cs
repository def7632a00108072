using System.Collections.Immutable;
using Spoolbook.Reading.Editing;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Entry.Lines;

/// <summary>Reads the words of a line one token at a time, by a key's name or by their form.</summary>
/// <param name="hasSlate">Whether a slate comes before the words.</param>
sealed class LineTokens(
    LineText line,
    ImmutableArray<LineWord> words,
    VerbGrammar grammar,
    RollSoFar? roll,
    LineContext context,
    bool hasSlate,
    LineFindings findings
)
{
    readonly bool _namesItsEnd = NamesItsEnd(words);

    bool IsTake => grammar.Verb is LineVerb.Take or LineVerb.Amend;

    /// <summary>The token that begins at a word; null where none does.</summary>
    /// <param name="said">The keys earlier in the line.</param>
    /// <param name="doubt">Why there is no token where it looks like one.</param>
    public LineToken? Read(int at, IReadOnlyDictionary<string, LineWord> said, out Finding? doubt)
    {
        doubt = null;
        var word = words[at];
        if (word.IsBroken)
        {
            doubt = findings.Quotes(word);
            return null;
        }

        if (word.IsQuoted)
        {
            return null;
        }

        return Opener(at) ?? Named(at, ref doubt) ?? Denied(at) ?? ByForm(at, said, ref doubt);
    }

    /// <summary>The key that a word nearly names, for "did you mean".</summary>
    public string? NearestKey(int at)
    {
        // A misspelt name counts only if the value after it fits.
        if (at + 1 >= words.Length || words[at].IsQuoted || words[at].HasColon)
        {
            return null;
        }

        var near = Likeness.Nearest(
            words[at].Text,
            grammar.Table.Keys.Where(k => k.Kind is not (ValueKind.Text or ValueKind.YesNo)).Select(k => k.Name)
        );
        return
            near is not null
            && grammar.Table.Find(near) is { } key
            && Fault(key, LineValues.Written(key, words[at + 1].Text, context)) is null
            ? near
            : null;
    }

    /// <summary>The word or name that a text is nearly.</summary>
    public string? NearestWord(string text) =>
        Likeness.Nearest(
            text,
            [
                .. grammar.Table.Keys.Select(k => k.Name),
                .. grammar.Openers,
                .. grammar.Forms.Where(f => f.Form == LineForm.Word).SelectMany(f => grammar.Table.Find(f.Key)!.Words),
                .. grammar.Forms.SelectMany(f => LineNames.Of(grammar.Verb, f.Key, roll, context)),
            ]
        );

    // Nothing but the name of a box comes after it.
    LineToken? Opener(int at)
    {
        Finding? doubt = null;
        return
            !words[at].HasColon
            && grammar.Openers.Any(words[at].Is)
            && at + 1 < words.Length
            && Named(at + 1, ref doubt) is { Keys: [var box] }
            && EntryTables.TotalsKeyOf(box.Key) is not null
            ? new LineToken(at + 1, [])
            : null;
    }

    LineToken? Named(int at, ref Finding? doubt)
    {
        foreach (var (name, key) in grammar.Names)
        {
            if ((hasSlate && IsOfSlate(key.Name)) || !IsNameAt(at, name))
            {
                continue;
            }

            var next = at + name.Length;
            if (Valued(key, words[next - 1], next, ref doubt) is { } token)
            {
                return token;
            }
        }

        return null;
    }

    public static bool IsOfSlate(string key) => key is "scene" or "shot" or "take";

    bool IsNameAt(int at, ImmutableArray<string> name)
    {
        if (at + name.Length > words.Length)
        {
            return false;
        }

        for (var i = 0; i < name.Length; i++)
        {
            if (!words[at + i].Is(name[i]) || (words[at + i].HasColon && i + 1 < name.Length))
            {
                return false;
            }
        }

        return true;
    }

    LineToken? Valued(EntryKey key, LineWord name, int next, ref Finding? doubt)
    {
        var value = next < words.Length && !name.HasColon ? words[next] : (LineWord?)null;
        if (key.Name == "note")
        {
            return value is { IsQuoted: false, HasColon: false, Text: "-" } && next + 1 == words.Length
                    ? new LineToken(next + 1, []) { NotNoted = key.Name }
                : value is { IsQuoted: true, IsBroken: false } quoted ? new LineToken(next + 1, key.Name, quoted.Text)
                : value is not null ? new LineToken(next, []) { BeginsRemark = true }
                : name.HasColon ? new LineToken(next, [])
                : null;
        }

        if (value is { IsQuoted: false, Text: "-" })
        {
            return new LineToken(next + 1, []) { NotNoted = key.Name };
        }

        if (key.Kind == ValueKind.YesNo)
        {
            return YesNo(key, value, next);
        }

        if (name.HasColon)
        {
            doubt = findings.ColonAfterKey(name);
            return null;
        }

        return value is not { IsBroken: false } written ? null
            : key.Kind == ValueKind.Moment && !written.IsQuoted ? Moment(next)
            : Value(key, written, next, ref doubt);
    }

    LineToken YesNo(EntryKey key, LineWord? value, int next)
    {
        if (value is not { IsBroken: false } said || Fault(key, said.Text) is not null)
        {
            return new LineToken(next, key.Name, "yes");
        }

        var token = new LineToken(next + 1, key.Name, said.IsQuoted ? said.Text : said.Text.ToLowerInvariant());
        return said.Is("no") && FlagAt(next + 1) is { } other
            ? token with
            {
                Fault = findings.WhichNo(said, $"no {other} yes", $"yes {other} no", words[next + 1]),
            }
            : token;
    }

    string? FlagAt(int at)
    {
        foreach (var (name, key) in grammar.Names)
        {
            if (key.Kind == ValueKind.YesNo && IsNameAt(at, name))
            {
                return key.Name;
            }
        }

        return null;
    }

    LineToken? Value(EntryKey key, LineWord word, int at, ref Finding? doubt)
    {
        var next = at + 1;
        var text = word.Text;
        if (key.Kind == ValueKind.Distance && !word.IsQuoted)
        {
            (text, next) = WithInches(at);
        }

        var parts = Parts(text, key.Many && !word.IsQuoted);
        var values = ImmutableArray.CreateBuilder<string>(parts.Length);
        foreach (var part in parts)
        {
            var written = word.IsQuoted ? part : LineValues.Written(key, part, context);
            if (!word.IsQuoted && LineNames.Of(grammar.Verb, key.Name, roll, context) is [_, ..] names)
            {
                if (LineNames.Find(part, names) is { } known)
                {
                    written = known;
                }
                else if (key.Name != "shutter" || !Film.Measure.Part(part).Succeeded)
                {
                    doubt =
                        word.HasFigure || Likeness.Nearest(part, names) is not null
                            ? findings.UnknownName(word, part, key.Name, names)
                            : doubt;
                    return null;
                }
            }

            if (key.Fault(written, context.Gauge, line.At(word.Start, word.End - word.Start)) is { } fault)
            {
                doubt = word.HasFigure || word.IsQuoted ? findings.BadValue(word, fault) : doubt;
                return null;
            }

            values.Add(written);
        }

        return values.Count == 0 ? null : new LineToken(next, [new KeyValue(key.Name, values.ToImmutable())]);
    }

    static string[] Parts(string text, bool isList) => isList ? text.Split(',', StringSplitOptions.RemoveEmptyEntries) : [text];

    // "no filter" says the same as "filter -", and "no sync" the same as "sync no".
    LineToken? Denied(int at)
    {
        if (!words[at].Is("no") || words[at].HasColon || grammar.Names.Any(n => n.Words.Length > 1 && IsNameAt(at, n.Words)))
        {
            return null;
        }

        foreach (var (name, key) in grammar.Names)
        {
            if (IsNameAt(at + 1, name))
            {
                var next = at + 1 + name.Length;
                return key.Kind == ValueKind.YesNo ? new LineToken(next, key.Name, "no") : new LineToken(next, []) { NotNoted = key.Name };
            }
        }

        return null;
    }

    LineToken? ByForm(int at, IReadOnlyDictionary<string, LineWord> said, ref Finding? doubt)
    {
        LineToken? first = null;
        var word = words[at];
        foreach (var rule in grammar.Forms)
        {
            if (Known(rule, at, said, ref doubt) is not { } token)
            {
                continue;
            }

            if (token.Fault is not null)
            {
                return token;
            }

            if (first is not null)
            {
                return first with { Fault = findings.TwoReadings(word, Spoken(first), Spoken(token)) };
            }

            first = token;
        }

        return first;
    }

    static string Spoken(LineToken token) =>
        string.Join(' ', token.Keys.Select(k => $"{k.Key} {string.Join(',', k.Values)}")) is { Length: > 0 } keys ? keys : "on";

    LineToken? Known(FormRule rule, int at, IReadOnlyDictionary<string, LineWord> said, ref Finding? doubt)
    {
        var word = words[at];
        var key = grammar.Table.Find(rule.Key)!;
        return rule.Form switch
        {
            LineForm.Position => Position(key, at, said, ref doubt),
            LineForm.Duration => Duration(key, at, said, ref doubt),
            LineForm.Distance => Distance(key, at, said, ref doubt),
            LineForm.Speed when LineValues.Speed(word.Text) is { } speed => Checked(key, word, speed, at + 1, ref doubt),
            LineForm.Stop when LineValues.Stop(word.Text) is { } stop => Checked(key, word, stop, at + 1, ref doubt),
            LineForm.Clock when LineValues.Clock(word.Text) is { } clock => new LineToken(at + 1, key.Name, clock),
            LineForm.Date when LineValues.Date(word.Text) is not null => new LineToken(at + 1, key.Name, word.Text),
            LineForm.Moment => Moment(at),
            LineForm.Word => WordOf(key, word.Text) is { } choice ? new LineToken(at + 1, key.Name, choice) : null,
            LineForm.Mark when LineValues.Mark(word.Text) is { } mark => new LineToken(at + 1, key.Name, mark),
            LineForm.Single when word.Is("ones") || word.Is("twos") || word.Is("threes") => new LineToken(
                at + 1,
                key.Name,
                word.Text.ToLowerInvariant()
            ),
            LineForm.Name => Name(key, at),
            LineForm.Shutter => Shutter(key, at, said),
            LineForm.Unit => Unit(at, ref doubt),
            LineForm.Left => Left(key, at, ref doubt),
            _ => null,
        };
    }

    // Feet and metres can be a focus too: only right after the slate are they the end of a take.
    LineToken? Position(EntryKey key, int at, IReadOnlyDictionary<string, LineWord> said, ref Finding? doubt)
    {
        var text = words[at].Text;
        var isOpen =
            !said.ContainsKey(key.Name)
            && !(IsTake && (_namesItsEnd || said.ContainsKey("frames")))
            && (key.Name != "after" || said.ContainsKey("before"));
        var isPosition =
            LineValues.IsNumber(text)
            || LineValues.IsFeetAndFrames(text)
            || LineValues.IsMeasure(text, "fr")
            || (!IsTake && LineValues.IsMeasure(text, "s"))
            || (LineValues.IsMeasure(text, "ft", "m") && (!IsTake || IsRightAfterSlate(at)));
        return isOpen && isPosition ? Checked(key, words[at], LineValues.Length(text, context), at + 1, ref doubt) : null;
    }

    // Nobody reads where the film is off a watch: seconds are how long a take ran.
    LineToken? Duration(EntryKey key, int at, IReadOnlyDictionary<string, LineWord> said, ref Finding? doubt) =>
        !_namesItsEnd && !said.ContainsKey(key.Name) && !said.ContainsKey("to") && LineValues.IsMeasure(words[at].Text, "s")
            ? Checked(key, words[at], LineValues.Length(words[at].Text, context), at + 1, ref doubt)
            : null;

    bool IsRightAfterSlate(int at) => hasSlate && at == 0;

    LineToken? Distance(EntryKey key, int at, IReadOnlyDictionary<string, LineWord> said, ref Finding? doubt)
    {
        var (text, next) = WithInches(at);
        var isDistance = text is "inf" or "infinity" or "∞" || LineValues.IsMeasure(text, "ft", "m", "cm") || IsFeetAndInches(text);
        var isEnd =
            grammar.Verb == LineVerb.Take
            && IsRightAfterSlate(at)
            && !_namesItsEnd
            && !said.ContainsKey("to")
            && LineValues.IsMeasure(text, "ft", "m");
        return isDistance && !isEnd ? Checked(key, words[at], LineValues.Distance(text), next, ref doubt) : null;
    }

    static bool IsFeetAndInches(string text) =>
        text.IndexOf("ft", StringComparison.Ordinal) is > 0 and var feet
        && LineValues.IsNumber(text[..feet])
        && LineValues.IsMeasure(text[(feet + 2)..].TrimStart(), "in");

    // "5ft 6in" is two words and one distance.
    (string Text, int Next) WithInches(int at) =>
        LineValues.IsMeasure(words[at].Text, "ft")
        && !words[at].HasColon
        && at + 1 < words.Length
        && !words[at + 1].IsQuoted
        && LineValues.IsMeasure(words[at + 1].Text, "in")
            ? ($"{words[at].Text} {words[at + 1].Text}", at + 2)
            : (words[at].Text, at + 1);

    LineToken? Checked(EntryKey key, LineWord word, string value, int next, ref Finding? doubt)
    {
        if (key.Fault(value, context.Gauge, line.At(word.Start, word.End - word.Start)) is { } fault)
        {
            doubt ??= findings.BadValue(word, fault);
            return null;
        }

        return new LineToken(next, key.Name, value);
    }

    LineToken? Moment(int at)
    {
        var word = words[at];
        if (LineValues.Date(word.Text) is not null)
        {
            var clock = at + 1 < words.Length && !word.HasColon && !words[at + 1].IsQuoted ? LineValues.Clock(words[at + 1].Text) : null;
            return new LineToken(clock is null ? at + 1 : at + 2, []) { Date = word.Text, Clock = clock };
        }

        return LineValues.Clock(word.Text) is { } time ? new LineToken(at + 1, []) { Clock = time } : null;
    }

    static string? WordOf(EntryKey key, string text)
    {
        foreach (var choice in key.Words)
        {
            if (choice.Equals(text, StringComparison.OrdinalIgnoreCase))
            {
                return choice;
            }
        }

        return null;
    }

    LineToken? Name(EntryKey key, int at)
    {
        var names = LineNames.Of(grammar.Verb, key.Name, roll, context);
        var parts = Parts(words[at].Text, key.Many);
        var known = ImmutableArray.CreateBuilder<string>(parts.Length);
        foreach (var part in parts)
        {
            if (LineNames.Find(part, names) is not { } name)
            {
                return null;
            }

            known.Add(name);
        }

        return known.Count == 0 ? null : new LineToken(at + 1, [new KeyValue(key.Name, known.ToImmutable())]);
    }

    LineToken? Shutter(EntryKey key, int at, IReadOnlyDictionary<string, LineWord> said)
    {
        var word = words[at];
        if (LineNames.Find(word.Text, LineNames.MarksOf(roll, context)) is { } mark)
        {
            return new LineToken(at + 1, key.Name, mark);
        }

        if (!LineNames.IsPart(word.Text))
        {
            return null;
        }

        var token = new LineToken(at + 1, key.Name, word.Text);
        return at > 0 && said.TryGetValue("stop", out var stop) && stop.Start == words[at - 1].Start
            ? token with
            {
                Fault = findings.PartOfStop(stop, word, LineValues.Stop(stop.Text) ?? stop.Text),
            }
            : token;
    }

    LineToken? Unit(int at, ref Finding? doubt)
    {
        var word = words[at];
        if (LineNames.Find(word.Text, context.Lots) is { } whole)
        {
            return new LineToken(at + 1, "lot", whole);
        }

        var slash = word.Text.LastIndexOf('/');
        if (slash <= 0 || !LineValues.IsWhole(word.Text[(slash + 1)..]) || LineValues.IsWhole(word.Text[..slash]))
        {
            return null;
        }

        var lot = word.Text[..slash];
        var known = context.Lots.IsEmpty ? lot : LineNames.Find(lot, context.Lots);
        if (known is null)
        {
            doubt = findings.UnknownName(word, lot, "lot", context.Lots);
            return null;
        }

        var unit = grammar.Table.Find("unit")!;
        return Checked(unit, word, word.Text[(slash + 1)..], at + 1, ref doubt) is { } token
            ? token with
            {
                Keys = [new KeyValue("lot", known), .. token.Keys],
            }
            : null;
    }

    LineToken? Left(EntryKey key, int at, ref Finding? doubt) =>
        words[at].Text is [>= '0' and <= '9', ..] && !words[at].HasColon && at + 1 < words.Length && words[at + 1].Is("left")
            ? Checked(key, words[at], LineValues.Length(words[at].Text, context), at + 2, ref doubt)
            : null;

    Finding? Fault(EntryKey key, string text) => key.Fault(text, context.Gauge, line.At(0, 1));

    static bool NamesItsEnd(ImmutableArray<LineWord> words)
    {
        for (var i = 0; i + 1 < words.Length; i++)
        {
            if ((words[i].Is("to") || words[i].Is("frames")) && words[i + 1].HasFigure)
            {
                return true;
            }
        }

        return false;
    }
}
