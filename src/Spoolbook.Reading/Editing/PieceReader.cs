using System.Collections.Immutable;
using Spoolbook.Reading.Trees;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Spoolbook.Reading.Editing;

/// <summary>A text to its pieces. The text has been read before, so that it is known to be YAML of bounded depth.</summary>
sealed class PieceReader
{
    readonly string _text;
    readonly Parser _parser;

    PieceReader(string text)
    {
        _text = text;
        _parser = new Parser(new Scanner(new StringReader(text), skipComments: true));
    }

    /// <summary>The root of the text's first document; null where there is none.</summary>
    public static Piece? Read(string text)
    {
        var reader = new PieceReader(text);
        reader.Next();
        if (reader.Next() is not DocumentStart)
        {
            return null;
        }

        reader.Next();
        return reader.PieceAtEvent();
    }

    ParsingEvent Next()
    {
        _parser.MoveNext();
        return _parser.Current!;
    }

    Piece PieceAtEvent()
    {
        var start = _parser.Current!;
        var from = NodeStart.Of(start, _text);
        return start switch
        {
            AnchorAlias alias => new AliasPiece(from, (int)alias.End.Index),
            Scalar scalar => new ScalarPiece(from, Trimmed(from, (int)scalar.End.Index), scalar.Value, scalar.Style),
            SequenceStart list => List(from, list.Style == SequenceStyle.Flow),
            _ => Map(from, ((MappingStart)start).Style == MappingStyle.Flow),
        };
    }

    ListPiece List(int from, bool inBrackets)
    {
        var items = ImmutableArray.CreateBuilder<Piece>();
        while (Next() is not SequenceEnd)
        {
            items.Add(PieceAtEvent());
        }

        var end = inBrackets ? After(']') : items.Select(i => i.End).DefaultIfEmpty(from).Max();
        return new ListPiece(from, end, inBrackets, items.ToImmutable());
    }

    MapPiece Map(int from, bool inBrackets)
    {
        var entries = ImmutableArray.CreateBuilder<EntryPiece>();
        while (Next() is not MappingEnd)
        {
            var key = PieceAtEvent();
            Next();
            entries.Add(new EntryPiece(key, Placed(PieceAtEvent(), key)));
        }

        var end = inBrackets ? After('}') : entries.Select(e => e.End).DefaultIfEmpty(from).Max();
        return new MapPiece(from, end, inBrackets, entries.ToImmutable());
    }

    // Nothing after a key stands right after its colon, wherever the parser says.
    Piece Placed(Piece value, Piece key)
    {
        if (value is not ScalarPiece { Style: ScalarStyle.Plain, Text: "" } nothing || nothing.End > nothing.Start)
        {
            return value;
        }

        var colon = _text.IndexOf(':', key.End);
        return nothing with { Start = colon + 1, End = colon + 1 };
    }

    // The event of the end stands before the closing bracket.
    int After(char bracket) => _text.IndexOf(bracket, (int)_parser.Current!.End.Index) + 1;

    // The end of a block of text, or of nothing at all, stands wherever the parser went on.
    int Trimmed(int from, int to)
    {
        to = Math.Clamp(to, from, _text.Length);
        while (to > from && char.IsWhiteSpace(_text[to - 1]))
        {
            to--;
        }

        return to;
    }
}
