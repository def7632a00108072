namespace Spoolbook.Acceptance;

/// <summary>Letters of two characters are never cut in half, wherever a long line is cropped for a finding.</summary>
public sealed class EmojiTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Theory]
    [InlineData("text")]
    [InlineData("json")]
    [InlineData("sarif")]
    public void A_slip_beside_a_remark_full_of_emoji_is_flagged_like_any_other(string format)
    {
        var production = _bench.CopyOf(Repository.Sample);
        var roll = Path.Combine(production, "rolls", "r01.yaml");
        var text = File.ReadAllText(roll);
        foreach (var (before, after) in from pad in Enumerable.Range(0, 4) from far in (int[])[0, 45, 120] select (pad, far))
        {
            var remark = new string('x', before) + string.Concat(Enumerable.Repeat("🎬", 90));
            var trail = string.Concat(Enumerable.Repeat("🎞", after));
            File.WriteAllText(roll, text + $"\nnonsense: {{note: \"{remark}\", speling: \"{trail}\"}} # {remark}\n");

            var (status, said, error) = _bench.Run("check", "production", "--format", format);

            Assert.Equal(ExitStatus.ErrorsFound, status);
            Assert.Contains("nonsense", said, StringComparison.Ordinal);
            Assert.Empty(error);
            Assert.DoesNotContain("\uFFFD", said, StringComparison.Ordinal);
            Assert.All(said.Index(), c => Assert.False(IsHalf(said, c.Index)));
        }
    }

    static bool IsHalf(string text, int at) =>
        char.IsSurrogate(text[at])
        && !(at + 1 < text.Length && char.IsSurrogatePair(text[at], text[at + 1]))
        && !(at > 0 && char.IsSurrogatePair(text[at - 1], text[at]));
}
