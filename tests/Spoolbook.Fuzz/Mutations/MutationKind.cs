namespace Spoolbook.Fuzz.Mutations;

/// <summary>One way to spoil an input.</summary>
internal sealed record MutationKind(string Name, Func<byte[], Chance, byte[]> Change)
{
    /// <summary>A kind that works on text: what is no UTF-8 is replaced on the way.</summary>
    public static MutationKind OfText(string name, Func<string, Chance, string> change) =>
        new(name, (bytes, chance) => Utf8.Bytes(change(Utf8.Text(bytes), chance)));

    /// <summary>A kind that works on lines, which it may change in place.</summary>
    public static MutationKind OfLines(string name, Action<List<string>, Chance> change) => OfText(name, (text, chance) =>
        {
            List<string> lines = [.. text.Split('\n')];
            change(lines, chance);
            return string.Join('\n', lines);
        });
}
