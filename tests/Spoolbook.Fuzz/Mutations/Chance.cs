namespace Spoolbook.Fuzz.Mutations;

/// <summary>What a mutation draws from: numbers that follow from the seed, words of the corpus, another input.</summary>
internal sealed class Chance(int seed, IReadOnlyList<string> words, Func<Chance, byte[]> another)
{
    readonly Random _random = new(seed);

    /// <summary>From 0 up to but without the limit.</summary>
    public int Below(int limit) => limit <= 0 ? 0 : _random.Next(limit);

    public bool OneIn(int n) => Below(n) == 0;

    public byte Byte() => (byte)Below(256);

    public T Of<T>(IReadOnlyList<T> list) => list[Below(list.Count)];

    /// <summary>A word of the corpus: a key, a value, a name.</summary>
    public string Word() => words.Count == 0 ? "word" : Of(words);

    /// <summary>Another input of the corpus.</summary>
    public byte[] Another() => another(this);

    /// <summary>Something that nobody expects in a text.</summary>
    public string Hostile() => HostileTexts.Any(this);

    /// <summary>A number, often one that is too large or almost one.</summary>
    public string Number() => HostileTexts.Number(this);

    /// <summary>A length, mostly short.</summary>
    public int Length(int most) => Math.Min(most, 1 + Below(1 << Below(8)));
}
