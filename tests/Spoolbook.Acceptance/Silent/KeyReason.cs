namespace Spoolbook.Acceptance.Silent;

/// <summary>Why a key may be changed and nobody notices: a line of reasons.txt.</summary>
/// <param name="IsSaidOnce">Whether nothing else in the record can contradict it.</param>
sealed record KeyReason(string Key, bool IsSaidOnce, string Text)
{
    /// <summary>Reads <c>*.note ~ words</c> or <c>take.to = read off the dial</c>; null for a comment.</summary>
    public static KeyReason? Of(string line) =>
        !line.StartsWith('#') && line.IndexOfAny(['=', '~']) is >= 0 and var at
            ? new KeyReason(line[..at].Trim(), line[at] == '~', line[(at + 1)..].Trim())
            : null;
}
