using System.Collections.Immutable;

namespace Spoolbook.Shoot.Findings;

/// <summary>
/// What a finding says, before it is in a language: a key of the words file and the values that the text there names
/// in braces. A value may be a sentence of its own (<c>1 frame</c>), so that it changes language with the rest.
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

    /// <summary>The key in the words file; empty for what stands as it is in every language.</summary>
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

    /// <summary>Several one after the other, with the same mark between them in every language.</summary>
    public static Sentence Joined(string separator, IEnumerable<Sentence> parts) =>
        new(separator, "", [.. parts.Select(part => ("", part))]);

    /// <summary>What stands as it is in every language: a name, a figure, what somebody wrote on set.</summary>
    public static Sentence Plain(string text) => new(text, "", []);

    /// <summary>The text in the language of some words.</summary>
    /// <exception cref="KeyNotFoundException">The words lack the key, or name a value that there is none of.</exception>
    public string In(SentenceWords words)
    {
        if (Key.Length > 0)
        {
            return words.Fill(Key, _values);
        }

        return _values.IsEmpty ? _plain! : string.Join(_plain, _values.Select(part => part.Value.In(words)));
    }

    /// <summary>The text in English.</summary>
    public override string ToString() => _english ??= In(SentenceWords.English);

    /// <inheritdoc/>
    public bool Equals(Sentence? other) =>
        other is not null && Key == other.Key && _plain == other._plain && _values.AsSpan().SequenceEqual(other._values.AsSpan());

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Sentence);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Key, _plain, _values.Length);
}
