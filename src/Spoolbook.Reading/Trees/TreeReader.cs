using System.Collections.Immutable;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Spoolbook.Reading.Trees;

/// <summary>
/// Makes a file's text its one tree, from the parser's events: what it says, and where each word is. Every value stays the text
/// in the file: <c>no</c> is a shot's letters as well as an answer, and only the key shows which.
/// </summary>
sealed class TreeReader
{
    /// <summary>Lists and maps inside one another; the format itself needs seven.</summary>
    public const int MostDepth = 50;

    /// <summary>Nodes that aliases may repeat in one file.</summary>
    public const int MostRepeated = 100_000;

    // A file that is not YAML at all is wrong on every line.
    const int MostSlips = 20;

    readonly Func<string, bool> _isKey;
    readonly SourceFile _source;
    readonly FindingList _findings;
    readonly Parser _parser;
    readonly Dictionary<AnchorName, Node?> _anchors = [];
    readonly Stack<int> _brackets = [];
    long _repeated;

    TreeReader(SourceFile source, FindingList findings, Func<string, bool>? isKey)
    {
        _isKey = isKey ?? (_ => false);
        _source = source;
        _findings = findings;
        _parser = new Parser(new Scanner(new StringReader(source.Text), skipComments: true));
    }

    /// <summary>
    /// The root of the file's tree; null, with findings, where the text is not YAML, and plain null where it is empty. All slips of
    /// a file are found at once: each is blanked out, and the rest is read again.
    /// </summary>
    /// <param name="isKey">Whether a word is a key of the format: then a comma is missing before it, not quotes around a text.</param>
    public static Node? Read(SourceFile source, FindingList findings, Func<string, bool>? isKey = null)
    {
        var (text, list) = (source, findings);
        for (var (slips, line) = (0, 0); slips < MostSlips; slips++)
        {
            try
            {
                var root = new TreeReader(text, list, isKey).Document();
                return slips == 0 ? root : null;
            }
            catch (TreeFault fault)
            {
                // A fault at or above the last one is only an effect of what was blanked out.
                if (fault.Place.Line <= line)
                {
                    return null;
                }

                findings.Add(fault.Check, fault.Description, fault.Place, fault.Help);
                if (fault.Check != SheetChecks.NotYaml)
                {
                    return null;
                }

                line = fault.Place.Line;
                (text, list) = (LeftOut.From(text, line), new FindingList());
            }
        }

        return null;
    }

    int? InnermostBracket => _brackets.TryPeek(out var open) ? open : null;

    Node? Document()
    {
        Next();
        if (Next() is StreamEnd)
        {
            return null;
        }

        var root = NodeAt(Next(), 0);
        Next();
        if (Next() is DocumentStart second)
        {
            throw new TreeFault(
                SheetChecks.NotYaml,
                Sentence.Of("sheet/not-yaml.message.second-document"),
                At(second),
                Sentence.Of("sheet/not-yaml.help.second-document")
            );
        }

        return root;
    }

    ParsingEvent Next()
    {
        try
        {
            _parser.MoveNext();
            return _parser.Current ?? throw new InvalidOperationException("The parser has come to no event.");
        }
        catch (YamlException e)
        {
            throw SyntaxFaults.For(_source, e.Message, (int)e.Start.Index, (int)e.End.Index, InnermostBracket, _isKey);
        }
        catch (Exception e) when (e is InvalidOperationException or ArgumentException or OverflowException or IndexOutOfRangeException)
        {
            // The parser itself crashes on some open brackets; the place it got to is the best there is.
            var at = (int)(_parser.Current?.End.Index ?? 0);
            throw SyntaxFaults.For(_source, "", at, at + 1, InnermostBracket, _isKey);
        }
    }

    Node NodeAt(ParsingEvent start, int depth)
    {
        if (start is AnchorAlias alias)
        {
            return Repeated(alias, depth);
        }

        var anchor = start is NodeEvent { Anchor.IsEmpty: false } named ? named.Anchor : AnchorName.Empty;
        if (!anchor.IsEmpty)
        {
            // Null until its node is complete: an alias inside would repeat itself.
            _anchors[anchor] = null;
        }

        Node node = start switch
        {
            Scalar scalar => Value(scalar),
            SequenceStart list => List(list, Deeper(depth, list)),
            MappingStart map => Map(map, Deeper(depth, map)),
            _ => throw new TreeFault(
                SheetChecks.NotYaml,
                Sentence.Of("sheet/not-yaml.message.no-value"),
                At(start),
                Sentence.Of("sheet/not-yaml.help.no-value")
            ),
        };
        if (!anchor.IsEmpty)
        {
            _anchors[anchor] = node;
        }

        return node;
    }

    ScalarNode Value(Scalar scalar)
    {
        var start = Start(scalar);
        var end = Trimmed(start, (int)scalar.End.Index);
        var text = StrayCharacters.Clean(_source, start, end, scalar.Value, scalar.Style, _findings);
        return new ScalarNode(At(scalar), start, end, text, scalar.Style)
        {
            Cut = scalar.Style == ScalarStyle.Plain && end > start ? CutAt(end) : null,
        };
    }

    // A comment has a blank after its sign; "number two" has none.
    (Place Place, string Text)? CutAt(int end)
    {
        var text = _source.Text;
        var at = end;
        while (at < text.Length && text[at] is ' ' or '\t')
        {
            at++;
        }

        if (at == end || at + 1 >= text.Length || text[at] != '#' || !char.IsLetterOrDigit(text[at + 1]))
        {
            return null;
        }

        var rest = text.AsSpan(at, _source.RestOfLine(at).Length);
        var next = rest[1..].IndexOf(" #", StringComparison.Ordinal);
        rest = next < 0 ? rest : rest[..(next + 1)].TrimEnd();
        return (_source.At(at, at + rest.Length), rest.ToString());
    }

    ListNode List(SequenceStart start, int depth)
    {
        var from = Start(start);
        var items = ImmutableArray.CreateBuilder<Node>();
        var inBrackets = start.Style == SequenceStyle.Flow;
        Open(from, inBrackets);
        ParsingEvent at;
        while ((at = Next()) is not SequenceEnd)
        {
            items.Add(NodeAt(at, depth));
        }

        Close(inBrackets);
        var end =
            inBrackets ? AfterBracket(at)
            : items.Count > 0 ? items[^1].End
            : from;
        return new ListNode(PlaceOf(from, at, inBrackets), from, end, inBrackets, items.ToImmutable());
    }

    MapNode Map(MappingStart start, int depth)
    {
        var from = Start(start);
        var last = from;
        var entries = new MapEntries(_findings);
        var inBrackets = start.Style == MappingStyle.Flow;
        Open(from, inBrackets);
        ParsingEvent at;
        while ((at = Next()) is not MappingEnd)
        {
            var key = NodeAt(at, depth);
            var value = Placed(NodeAt(Next(), depth), key);
            entries.Add(key, value);
            last = Math.Max(key.End, value.End);
        }

        Close(inBrackets);
        // In a list's brackets one key with its value needs no braces of its own.
        var end = inBrackets && _source.Text[from] == '{' ? AfterBracket(at) : last;
        var (written, meant) = entries.Whole();
        return new MapNode(PlaceOf(from, at, inBrackets), from, end, inBrackets, written, meant);
    }

    void Open(int from, bool inBrackets)
    {
        if (inBrackets)
        {
            _brackets.Push(from);
        }
    }

    void Close(bool inBrackets)
    {
        if (inBrackets)
        {
            _brackets.Pop();
        }
    }

    // The end event is before the closing bracket.
    static int AfterBracket(ParsingEvent end) => (int)end.End.Index + 1;

    /// <summary>The place of a list or map: its brackets, or its first line where it has none.</summary>
    Place PlaceOf(int from, ParsingEvent end, bool inBrackets) =>
        inBrackets ? _source.At(from, AfterBracket(end)) : _source.RestOfLine(from);

    // An empty value belongs right after its colon, but the parser runs on over blanks, anchors and tags.
    Node Placed(Node value, Node key)
    {
        if (value is not ScalarNode { Style: ScalarStyle.Plain, Text: "" } nothing || nothing.End > nothing.Start)
        {
            return value;
        }

        var colon = _source.Text.IndexOf(':', key.End, Math.Max(0, nothing.Start - key.End));
        return colon < 0 || colon + 1 == nothing.Start ? value : nothing.StandingAt(colon + 1);
    }

    // The parser ends a block of text, or an empty value, wherever it ran on to.
    int Trimmed(int from, int to)
    {
        to = Math.Clamp(to, from, _source.Text.Length);
        while (to > from && char.IsWhiteSpace(_source.Text[to - 1]))
        {
            to--;
        }

        return to;
    }

    AliasNode Repeated(AnchorAlias alias, int depth)
    {
        var name = Quote.Short($"{alias.Value}");
        if (!_anchors.TryGetValue(alias.Value, out var node))
        {
            throw new TreeFault(
                SheetChecks.NotYaml,
                Sentence.Of("sheet/not-yaml.message.alias-of-nothing", ("name", name)),
                At(alias),
                Sentence.Of("sheet/not-yaml.help.alias-of-nothing")
            );
        }

        if (node is null)
        {
            throw new TreeFault(
                SheetChecks.NotYaml,
                Sentence.Of("sheet/not-yaml.message.alias-of-itself", ("name", name)),
                At(alias),
                Sentence.Of("sheet/not-yaml.help.alias-of-itself")
            );
        }

        _repeated += node.Weight;
        if (_repeated > MostRepeated)
        {
            throw new TreeFault(
                SheetChecks.TooLarge,
                Sentence.Of("sheet/too-large.message.repeated"),
                At(alias),
                Sentence.Of("sheet/too-large.help.repeated")
            );
        }

        return depth + node.Height <= MostDepth ? new AliasNode(At(alias), Start(alias), (int)alias.End.Index, node) : throw TooDeep(alias);
    }

    int Deeper(int depth, ParsingEvent at) => depth < MostDepth ? depth + 1 : throw TooDeep(at);

    TreeFault TooDeep(ParsingEvent at) =>
        new(SheetChecks.TooDeep, Sentence.Of("sheet/too-deep.message", ("most", MostDepth)), At(at), Sentence.Of("sheet/too-deep.help"));

    Place At(ParsingEvent e) => _source.At(Start(e), Math.Max((int)e.End.Index, Start(e)));

    // After a directive or two the parser counts past the end of the text.
    int Start(ParsingEvent e) => Math.Min(NodeStart.Of(e, _source.Text), _source.Text.Length);
}
