using System.Collections.Immutable;

namespace Spoolbook.Shoot.Findings;

/// <summary>
/// A text of a finding, independent of language: a key of the words file, and values for the names in braces there. A
/// value may be a sentence itself (<c>1 frame</c>), which is translated with the rest.
/// </summary>
public sealed class Sentence : IEquatable<Sentence>
{
    readonly string? _plain;
    readonly ImmutableArray<(string Name, Sentence Value)> _values;
    string? _english;

    Sentence(string? plain, string key, ImmutableArray<(string Name, Sentence Value)> values)
    {
        (_plain, Key, _values) = (plain, key, values);
    }

    /// <summary>The key in the words file; empty for a text that is the same in every language.</summary>
    public string Key { get; }

    /// <summary>The text of a key, with its values by name.</summary>
    public static Sentence Of(string key, params ReadOnlySpan<(string Name, SentenceValue Value)> values)
    {
        var filled = ImmutableArray.CreateBuilder<(string Name, Sentence Value)>(values.Length);
        foreach (var (name, value) in values)
        {
            filled.Add((name, value.Sentence));
        }

        return new(null, key, filled.MoveToImmutable());
    }

    /// <summary>Several sentences in a row, with the same separator in every language.</summary>
    public static Sentence Joined(string separator, IEnumerable<Sentence> parts) =>
        new(separator, "", [.. parts.Select(part => ("", part))]);

    /// <summary>A text that is the same in every language: a name, a figure, a note from set.</summary>
    public static Sentence Plain(string text) => new(text, "", []);

    /// <summary>The text in the language of some words.</summary>
    /// <exception cref="KeyNotFoundException">The words lack the key, or name a value that there is none of.</exception>
    public string In(SentenceTexts words)
    {
        if (Key.Length > 0)
        {
            return words.Fill(Key, _values);
        }

        return _values.IsEmpty ? _plain! : string.Join(_plain, _values.Select(part => part.Value.In(words)));
    }

    /// <summary>The text in English.</summary>
    public override string ToString() => _english ??= In(SentenceTexts.English);

    /// <inheritdoc/>
    public bool Equals(Sentence? other) =>
        other is not null && Key == other.Key && _plain == other._plain && _values.AsSpan().SequenceEqual(other._values.AsSpan());

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Sentence);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Key, _plain, _values.Length);
}
