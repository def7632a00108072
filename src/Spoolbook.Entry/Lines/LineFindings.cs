using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Entry.Lines;

/// <summary>Why a line is refused: where, what is wrong, and how to say the same line right.</summary>
sealed class LineFindings(LineText line, string? roll)
{
    /// <summary>What can follow the verb; null where the line has no entry of its own.</summary>
    public VerbGrammar? Grammar { get; init; }

    public Finding NotAVerb(LineWord word) =>
        Of(
            LineChecks.Unreadable,
            word,
            Sentence.Of("line/unreadable.message.verb", ("word", Shown(word))),
            Likeness.Nearest(word.Text, LineGrammar.Verbs) is { } near
                ? Sentence.Of("line/unreadable.help.near", ("line", With(word, near)))
                : Sentence.Of("line/unreadable.help.verb")
        );

    /// <summary>A mark before its slate.</summary>
    /// <param name="isAll">Whether the line has nothing more, as where the mark of a take that is logged is to change.</param>
    public Finding MarkFirst(LineWord mark, LineWord slate, bool isAll) =>
        Of(
            LineChecks.Unreadable,
            mark,
            Sentence.Of("line/unreadable.message.verb", ("word", Shown(mark))),
            Sentence.Of(
                "line/unreadable.help.near",
                ("line", Replaced(mark.Start, slate.End, $"{(isAll ? "amend " : "")}{Shown(slate)} {Shown(mark)}"))
            )
        );

    public Finding NotANumber(LineWord word) =>
        Of(
            LineChecks.Unreadable,
            word,
            Sentence.Of("line/unreadable.message.number", ("word", Shown(word))),
            Sentence.Of("line/unreadable.help.number")
        );

    public Finding NotASlate(LineWord word) =>
        Of(
            LineChecks.Unreadable,
            word,
            Sentence.Of("line/unreadable.message.slate", ("word", Shown(word))),
            Sentence.Of("line/unreadable.help.slate")
        );

    public Finding NotADay(LineWord word) =>
        Of(
            LineChecks.Unreadable,
            word,
            Sentence.Of("line/unreadable.message.day", ("word", Shown(word))),
            Sentence.Of("line/unreadable.help.day")
        );

    /// <summary>A roll before a day, which is of the lines about every roll.</summary>
    public Finding NotOfOneRoll(LineWord roll) =>
        Of(
            LineChecks.Unreadable,
            roll,
            Sentence.Of("line/unreadable.message", ("word", Shown(roll))),
            Sentence.Of("line/unreadable.help.near", ("line", With(roll, "")))
        );

    public Finding Quotes(LineWord word) =>
        Of(LineChecks.Unreadable, word, Sentence.Of("line/unreadable.message.quote"), Sentence.Of("line/unreadable.help.quote"));

    public Finding ColonAfterKey(LineWord word) =>
        Of(
            LineChecks.Unreadable,
            word,
            Sentence.Of("line/unreadable.message.colon", ("word", Shown(word))),
            Sentence.Of("line/unreadable.help.near", ("line", With(word, word.Text)))
        );

    /// <summary>A word that is no token, and no remark either: others follow it, or it has a figure in it.</summary>
    public Finding Unreadable(LineWord word, string? near) =>
        Of(LineChecks.Unreadable, word, Sentence.Of("line/unreadable.message", ("word", Shown(word))), HelpFor(word, near));

    Sentence HelpFor(LineWord word, string? near) =>
        Grammar is { HasRemark: true }
            ? near is null
                ? Sentence.Of("line/unreadable.help.remark", ("line", AsRemark(word)))
                : Sentence.Of("line/unreadable.help.either", ("line", With(word, near)), ("remark", AsRemark(word)))
            : near is { Length: > 2 } && !word.Is(near) && !Grammar!.Openers.Contains(near)
                ? Sentence.Of("line/unreadable.help.near", ("line", With(word, near)))
                : Grammar?.Openers is [_, ..]
                    ? Sentence.Of("line/unreadable.help.boxes")
                    : Sentence.Of(
                        "line/unreadable.help.no-remark",
                        ("line", Short(line.Text[..word.Start].TrimEnd(' ', ',', ';', ':'), 120))
                    );

    public Finding TwoReadings(LineWord word, string one, string other) =>
        Of(
            LineChecks.TwoReadings,
            word,
            Sentence.Of("line/two-readings.message", ("word", Shown(word)), ("one", one), ("other", other)),
            Sentence.Of("line/two-readings.help", ("one", With(word, one)), ("other", With(word, other)))
        );

    /// <summary>A mark and a length after it: of the last take, or a box of the sheet of the roll that came out last.</summary>
    /// <param name="both">The two of them.</param>
    /// <param name="unloaded">That roll.</param>
    /// <param name="verb">Where the verb begins.</param>
    public Finding TakeOrBox(LineWord both, LineWord mark, LineWord length, string unloaded, int verb) =>
        Of(
            LineChecks.TwoReadings,
            both,
            Sentence.Of("line/two-readings.message.box", ("mark", Shown(mark)), ("length", Shown(length)), ("roll", unloaded)),
            Sentence.Of(
                "line/two-readings.help",
                ("one", With(both, $"to {Shown(length)} {Shown(mark)}")),
                ("other", Short(line.Text.Insert(verb, unloaded + ": "), 120))
            )
        );

    public Finding SaidTwice(LineWord word, string key, LineWord first) =>
        Of(
            LineChecks.SaidTwice,
            word,
            Sentence.Of("line/said-twice.message", ("key", key), ("first", Shown(first)), ("word", Shown(word))),
            Grammar is { HasRemark: false }
                ? Sentence.Of("line/said-twice.help.one", ("line", With(word, "")))
                : Sentence.Of("line/said-twice.help", ("line", With(word, "")), ("remark", AsRemark(word)))
        );

    /// <param name="at">Where in the line to add the token.</param>
    public Finding Needs(Sentence message, int at, string token) =>
        new(LineChecks.Needs, Level.Error, message, Whole)
        {
            Advice = Sentence.Of(
                "line/needs.help",
                ("line", line.Text.TrimEnd().Insert(Math.Min(at, line.Text.TrimEnd().Length), " " + token))
            ),
            Roll = roll,
        };

    public Finding Needs(Sentence message, Sentence help) =>
        new(LineChecks.Needs, Level.Error, message, Whole) { Advice = help, Roll = roll };

    /// <summary>The finding that reading the files gives for the same value.</summary>
    public Finding BadValue(LineWord word, Finding fault) => Of(LineChecks.BadValue, word, fault.Description, fault.Advice);

    public Finding UnknownName(LineWord word, string text, string key, IReadOnlyList<string> names) =>
        Of(
            LineChecks.UnknownName,
            word,
            Sentence.Of("line/unknown-name.message", ("key", key), ("word", Short(text))),
            Likeness.Nearest(text, names) is { } near
                ? HelpFor(word, near)
                : Sentence.Of("line/unknown-name.help", ("names", string.Join(", ", names.Take(12).Select(n => $"`{n}`"))))
        );

    public Finding NotAMark(LineWord word) =>
        Of(
            LineChecks.UnknownName,
            word,
            Sentence.Of("line/unknown-name.message.mark", ("word", Shown(word))),
            Sentence.Of("line/unreadable.help.remark", ("line", AsRemark(word)))
        );

    public Finding UnknownRoll(LineWord word, IReadOnlyList<string> names) =>
        Of(
            LineChecks.UnknownName,
            word,
            Sentence.Of("line/unknown-name.message.roll", ("word", Shown(word))),
            Likeness.Nearest(word.Text, names) is { } near
                ? Sentence.Of("line/unreadable.help.near", ("line", With(word, near + ":")))
                : Sentence.Of("line/unknown-name.help.roll")
        );

    public Finding UnknownTake(LineWord word, string roll, IReadOnlyList<string> slates) =>
        Of(
            LineChecks.UnknownName,
            word,
            Sentence.Of("line/unknown-name.message.take", ("roll", roll), ("word", Shown(word))),
            Likeness.Nearest(Shown(word), slates) is { } near
                ? Sentence.Of("line/unreadable.help.near", ("line", With(word, near)))
                : Sentence.Of("line/unknown-name.help.take", ("roll", roll))
        );

    public Finding WhichRoll(IReadOnlyList<string> rolls, int at) =>
        Needs(
            Sentence.Of("line/needs.message.roll", ("rolls", string.Join(", ", rolls))),
            Sentence.Of("line/needs.help", ("line", Short(line.Text.Insert(at, rolls[0] + ": "), 120)))
        );

    /// <summary>The last entry, with no roll in a camera: which roll's?</summary>
    /// <param name="last">The roll that came out last.</param>
    public Finding LastIsOut(string last, int at) =>
        Needs(
            Sentence.Of("line/needs.message.last-is-out", ("roll", last)),
            Sentence.Of("line/needs.help.last-is-out", ("line", Short(line.Text.Insert(at, last + ": "), 120)))
        );

    /// <summary>A no between two things that it could deny.</summary>
    public Finding WhichNo(LineWord no, string one, string other, LineWord after) => TwoReadings(no with { End = after.End }, one, other);

    /// <summary>A part after a stop: a third of a stop, or the shutter.</summary>
    public Finding PartOfStop(LineWord stop, LineWord part, string value) =>
        Of(
            LineChecks.TwoReadings,
            part,
            Sentence.Of(
                "line/two-readings.message",
                ("word", Shown(part)),
                ("one", $"stop \"{value} {part.Text}\""),
                ("other", $"shutter {part.Text}")
            ),
            Sentence.Of(
                "line/two-readings.help",
                ("one", Replaced(stop.Start, part.End, $"stop \"{value} {part.Text}\"")),
                ("other", With(part, $"shutter {part.Text}"))
            )
        );

    Place Whole => line.At(0, Math.Max(1, line.Text.TrimEnd().Length));

    Finding Of(string check, LineWord word, Sentence message, Sentence help) =>
        new(check, Level.Error, message, line.At(word.Start, Math.Max(1, word.End - word.Start))) { Advice = help, Roll = roll };

    /// <summary>The line with another word in place of one.</summary>
    string With(LineWord word, string instead) => Replaced(word.Start, word.End, instead);

    string Replaced(int start, int end, string instead) =>
        Short(
            string.Join(
                ' ',
                $"{line.Text[..start]}{instead} {line.Text[end..]}".Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            ),
            120
        );

    string AsRemark(LineWord word) => Short($"{line.Text[..word.Start].TrimEnd()} : {line.Text[word.Start..].Trim()}", 120);

    string Shown(LineWord word) => Short(line.Text[word.Start..word.End].TrimEnd(',', ';', ':'));

    static string Short(string text, int most = 40)
    {
        var plain = string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c)).Trim();
        return plain.Length <= most ? plain
            : char.IsHighSurrogate(plain[most - 1]) ? plain[..(most - 1)] + "…"
            : plain[..most] + "…";
    }
}
