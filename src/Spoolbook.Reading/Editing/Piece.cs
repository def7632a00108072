using System.Collections.Immutable;
using YamlDotNet.Core;

namespace Spoolbook.Reading.Editing;

/// <summary>A piece of YAML as it stands in the text, for changing it there: aliases are not followed, and nothing is merged.</summary>
/// <param name="Start">Where its own text begins, after any anchor.</param>
/// <param name="End">The first character after it; line ends, blanks and comments after it are not part of it.</param>
abstract record Piece(int Start, int End);

/// <summary>A value.</summary>
sealed record ScalarPiece(int Start, int End, string Text, ScalarStyle Style) : Piece(Start, End);

/// <summary>A repetition, <c>*name</c>.</summary>
sealed record AliasPiece(int Start, int End) : Piece(Start, End);

/// <summary>A list, in brackets or on lines of its own.</summary>
sealed record ListPiece(int Start, int End, bool InBrackets, ImmutableArray<Piece> Items) : Piece(Start, End);

/// <summary>A map, in brackets or on lines of its own.</summary>
sealed record MapPiece(int Start, int End, bool InBrackets, ImmutableArray<EntryPiece> Entries) : Piece(Start, End)
{
    public EntryPiece? Entry(string key) => Entries.FirstOrDefault(e => e.Name == key);
}

/// <summary>A key and what is written after it.</summary>
sealed record EntryPiece(Piece Key, Piece Value)
{
    /// <summary>The key's name; null where it is no word.</summary>
    public string? Name => (Key as ScalarPiece)?.Text;

    public int Start => Key.Start;

    public int End => Math.Max(Key.End, Value.End);
}
