using System.Collections.Immutable;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Records;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Spoolbook.Reading.Trees;

/// <summary>
/// A file's text to a tree of located nodes, by the parser's events. Every value stays the text that was
/// written: <c>no</c> is a shot's letters as well as an answer, and only the key tells which.
/// </summary>
sealed class TreeReader
{
    /// <summary>Lists and maps in one another; the format itself needs seven.</summary>
    public const int MostDepth = 50;

    /// <summary>Nodes that aliases may repeat in one file.</summary>
    public const int MostRepeated = 100_000;

    readonly SourceFile _source;
    readonly FindingList _findings;
    readonly Parser _parser;
    readonly Dictionary<AnchorName, Node?> _anchors = [];
    readonly Stack<int> _brackets = [];
    long _repeated;

    TreeReader(SourceFile source, FindingList findings)
    {
        _source = source;
        _findings = findings;
        _parser = new Parser(new Scanner(new StringReader(source.Text), skipComments: true));
    }

    /// <summary>The root of the file's tree; null, with a finding, where the text is not YAML, and null alone where there is none.</summary>
    public static Node? Read(SourceFile source, FindingList findings)
    {
        try
        {
            return new TreeReader(source, findings).Document();
        }
        catch (TreeFault fault)
        {
            findings.Add(fault.Check, fault.Message, fault.Place, fault.Help);
            return null;
        }
    }

    int? InnermostBracket => _brackets.TryPeek(out var open) ? open : null;

    Node? Document()
    {
        Next();
        if (Next() is StreamEnd)
        {
            return null;
        }

        Next();
        var root = NodeAtEvent(0);
        Next();
        if (Next() is DocumentStart second)
        {
            throw new TreeFault(SheetChecks.NotYaml, "A second YAML document begins here, and only one is read.", At(second), "Take the line `---` out, or put what follows in a file of its own.");
        }

        return root;
    }

    ParsingEvent Next()
    {
        try
        {
            _parser.MoveNext();
            return _parser.Current!;
        }
        catch (YamlException e)
        {
            throw SyntaxFaults.For(_source, e.Message, (int)e.Start.Index, (int)e.End.Index, InnermostBracket);
        }
        catch (Exception e) when (e is InvalidOperationException or ArgumentException or OverflowException or IndexOutOfRangeException)
        {
            // The parser itself stumbles over some unclosed brackets; where it stood is the best place there is.
            var at = (int)(_parser.Current?.End.Index ?? 0);
            throw SyntaxFaults.For(_source, "", at, at + 1, InnermostBracket);
        }
    }

    /// <summary>The node that begins at the current event.</summary>
    Node NodeAtEvent(int depth)
    {
        var start = _parser.Current!;
        if (start is AnchorAlias alias)
        {
            return Repeated(alias, depth);
        }

        var anchor = start is NodeEvent { Anchor.IsEmpty: false } named ? named.Anchor : AnchorName.Empty;
        if (!anchor.IsEmpty)
        {
            // Open until its node is whole: an alias in between repeats itself.
            _anchors[anchor] = null;
        }

        Node node = start switch
        {
            Scalar scalar => Value(scalar),
            SequenceStart list => List(list, Deeper(depth, list)),
            MappingStart map => Map(map, Deeper(depth, map)),
            _ => throw new TreeFault(SheetChecks.NotYaml, "A value is missing here.", At(start), "Write the value, or take out what stands round it."),
        };
        if (!anchor.IsEmpty)
        {
            _anchors[anchor] = node;
        }

        return node;
    }

    ScalarNode Value(Scalar scalar)
    {
        var isBlank = scalar.Style == ScalarStyle.Plain && (scalar.Value is "" or "~" or "null");
        return new ScalarNode(At(scalar), scalar.Value, isBlank);
    }

    ListNode List(SequenceStart start, int depth)
    {
        var items = ImmutableArray.CreateBuilder<Node>();
        Open(start, start.Style == SequenceStyle.Flow);
        while (Next() is not SequenceEnd)
        {
            items.Add(NodeAtEvent(depth));
        }

        return new ListNode(Close(start, start.Style == SequenceStyle.Flow), items.ToImmutable());
    }

    MapNode Map(MappingStart start, int depth)
    {
        var entries = new MapEntries(_findings);
        var inBrackets = start.Style == MappingStyle.Flow;
        Open(start, inBrackets);
        while (Next() is not MappingEnd)
        {
            var key = NodeAtEvent(depth);
            Next();
            entries.Add(key, NodeAtEvent(depth));
        }

        return new MapNode(Close(start, inBrackets), entries.Merged()) { InBrackets = inBrackets };
    }

    void Open(ParsingEvent start, bool inBrackets)
    {
        if (inBrackets)
        {
            _brackets.Push(Start(start));
        }
    }

    /// <summary>The place of a list or map whose end has come: its brackets, or its first line where it has none.</summary>
    Place Close(ParsingEvent start, bool inBrackets)
    {
        if (!inBrackets)
        {
            return _source.RestOfLine(Start(start));
        }

        // The event of the end stands before the closing bracket.
        _brackets.Pop();
        return _source.At(Start(start), (int)_parser.Current!.End.Index + 1);
    }

    Node Repeated(AnchorAlias alias, int depth)
    {
        if (!_anchors.TryGetValue(alias.Value, out var node))
        {
            throw new TreeFault(SheetChecks.NotYaml, $"`*{alias.Value}` repeats something named `&{alias.Value}`, which is not written before it.", At(alias), "Write the value out, or put quotes round a text that begins with `*`.");
        }

        if (node is null)
        {
            throw new TreeFault(SheetChecks.NotYaml, $"`*{alias.Value}` stands inside what it repeats, which would never end.", At(alias), "Write the value out.");
        }

        _repeated += node.Weight;
        if (_repeated > MostRepeated)
        {
            throw new TreeFault(SheetChecks.TooLarge, "Repeating with `*` makes the file far too large from here on.", At(alias), "Write out what is needed, without `*`.");
        }

        return depth + node.Height <= MostDepth ? node : throw TooDeep(alias);
    }

    int Deeper(int depth, ParsingEvent at) => depth < MostDepth ? depth + 1 : throw TooDeep(at);

    TreeFault TooDeep(ParsingEvent at) => new(SheetChecks.TooDeep, FormattableString.Invariant($"More than {MostDepth} lists and maps lie in one another here."), At(at), "Look for brackets that are never closed.");

    Place At(ParsingEvent e) => _source.At(Start(e), Math.Max((int)e.End.Index, Start(e)));

    int Start(ParsingEvent e) => NodeStart.Of(e, _source.Text);
}
