using System.Collections.Immutable;
using System.Text;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Keys;
using Spoolbook.Reading.Trees;

namespace Spoolbook.Reading.Beginning;

/// <summary>
/// A file of an earlier production, cut into its keys for the next one. What happened back then (what came back, when, in what
/// state, which rolls went to the lab) is left out. What a person wrote about it stays as a comment: the next crew wants to know.
/// </summary>
public sealed class EarlierText
{
    // Over and done with: it says nothing about the next shoot.
    static readonly ImmutableHashSet<string> Gone =
    [
        ReturnKeys.Back.Name,
        BodyKeys.Spring.Name,
        LabKeys.Consignments.Name,
        LabelKeys.Start.Name,
    ];

    // Over, but worth reading once before the next shoot.
    static readonly ImmutableHashSet<string> Remembered =
    [
        ReturnKeys.Due.Name,
        ReturnKeys.Note.Name,
        ReturnKeys.ConditionOut.Name,
        ReturnKeys.ConditionBack.Name,
        LoanKeys.On.Name,
        LoanKeys.BackOn.Name,
        LabKeys.NeededBy.Name,
    ];

    readonly string _text;
    readonly MapNode _root;
    readonly List<(int From, int To, string Text)> _cuts = [];

    EarlierText(string text, MapNode root) => (_text, _root) = (text, root);

    /// <summary>The wanted keys at the top of a file, in its order; none where it is not lines of keys.</summary>
    public static ImmutableArray<EarlierKey> KeysOf(string file, string text, IReadOnlyCollection<string> wanted)
    {
        text = text.ReplaceLineEndings("\n");
        text = text.EndsWith('\n') ? text : text + "\n";
        var findings = new FindingList();
        return TreeReader.Read(new SourceFile(file, text), findings) is MapNode { InBrackets: false } root && findings.Count == 0
            ? new EarlierText(text, root).Keys(wanted)
            : [];
    }

    ImmutableArray<EarlierKey> Keys(IReadOnlyCollection<string> wanted)
    {
        var entries = _root.Written.Where(e => e.WrittenName is { } name && wanted.Contains(name)).ToList();
        foreach (var entry in entries)
        {
            CutIn(entry.WrittenValue);
        }

        return [.. entries.Select(Key)];
    }

    EarlierKey Key(MapEntry entry)
    {
        var (from, to) = (WithCommentsAbove(StartOfLine(entry.Start)), EndOfLine(entry.End));
        var text = new StringBuilder();
        var at = from;
        foreach (var cut in _cuts.Where(c => c.From >= from && c.To <= to).OrderBy(c => c.From))
        {
            text.Append(_text, at, cut.From - at).Append(cut.Text);
            at = cut.To;
        }

        var item = entry.WrittenValue is ListNode { InBrackets: false, Written: [var first, ..] } ? first.Start : (int?)null;
        return new EarlierKey(
            entry.WrittenName!,
            text.Append(_text, at, to - at).ToString(),
            item is { } start ? _text.AsSpan(StartOfLine(start), start - StartOfLine(start)).IndexOf('-') : null
        );
    }

    void CutIn(Node value)
    {
        switch (value)
        {
            case ListNode list:
                foreach (var item in list.Written)
                {
                    CutIn(item);
                }

                break;
            case MapNode { InBrackets: true } map:
                CutInBrackets(map);
                break;
            case MapNode map:
                CutOnLines(map);
                break;
            default:
                break;
        }
    }

    void CutInBrackets(MapNode map)
    {
        var left = map.Written.Where(e => !Goes(e)).ToList();
        if (left.Count == map.Written.Length || left.Count == 0)
        {
            return;
        }

        var kept = string.Join(", ", left.Select(TextOf));
        _cuts.Add((map.Written[0].Start, map.Written[^1].End, kept));
        var end = LineEnd(map.End);
        var remembered = map.Written.Where(e => IsRemembered(e, map)).Select(TextOf).ToList();
        if (remembered.Count > 0 && _text.AsSpan(map.End, end - map.End).IsWhiteSpace())
        {
            _cuts.Add((end, end, $"  # last time: {string.Join(", ", remembered).ReplaceLineEndings(" ")}"));
        }
    }

    void CutOnLines(MapNode map)
    {
        for (var at = 0; at < map.Written.Length; at++)
        {
            var entry = map.Written[at];
            if (!Goes(entry))
            {
                CutIn(entry.WrittenValue);
                continue;
            }

            var (from, to) = (StartOfLine(entry.Start), EndOfLine(entry.End));
            if (_text.AsSpan(from, entry.Start - from).IsWhiteSpace())
            {
                var comment = IsRemembered(entry, map)
                    ? $"{_text[from..entry.Start]}# {TextOf(entry).ReplaceLineEndings(" ")}  # last time\n"
                    : "";
                _cuts.Add((from, to, comment));
            }
            else if (at + 1 < map.Written.Length)
            {
                // The dash before it now belongs to the next key.
                _cuts.Add((entry.Start, map.Written[at + 1].Start, ""));
            }
        }
    }

    // When everything came back there is nothing to remember.
    static bool IsRemembered(MapEntry entry, MapNode map) =>
        entry.WrittenName is { } name
        && (
            Remembered.Contains(name)
            || (
                name == ReturnKeys.Back.Name
                && entry.Value is ScalarNode { IsBlank: false } back
                && back.Text != ((map.Entry(ReturnKeys.Out.Name)?.Value as ScalarNode)?.Text ?? "1")
            )
        );

    static bool Goes(MapEntry entry) => entry.WrittenName is { } name && (Gone.Contains(name) || Remembered.Contains(name));

    string TextOf(MapEntry entry) => _text[entry.Start..entry.End].TrimEnd();

    // A comment right above a key is about it. The head of the file, above a blank line or with the schema's name, is about the file.
    int WithCommentsAbove(int start)
    {
        while (start > 0)
        {
            var above = StartOfLine(start - 1);
            var line = _text.AsSpan(above, start - above).Trim();
            if (line.Length == 0 || line[0] != '#' || line.Contains("$schema", StringComparison.Ordinal))
            {
                break;
            }

            start = above;
        }

        return start;
    }

    int StartOfLine(int at) => at == 0 ? 0 : _text.LastIndexOf('\n', at - 1) + 1;

    int LineEnd(int at) => _text.IndexOf('\n', at) is >= 0 and var end ? end : _text.Length;

    // A block of text already ends at the start of the next line.
    int EndOfLine(int at) => at > 0 && _text[at - 1] == '\n' ? at : Math.Min(LineEnd(at) + 1, _text.Length);
}
