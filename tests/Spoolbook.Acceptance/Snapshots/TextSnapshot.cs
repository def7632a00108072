using System.Text;

namespace Spoolbook.Acceptance.Snapshots;

/// <summary>Text that was read once and accepted, in a file beside what it is about.</summary>
static class TextSnapshot
{
    public const string Verified = ".verified.txt";
    public const string Received = ".received.txt";

    /// <summary>
    /// Compares text with the accepted file of that name in a folder. Where they differ, the text is written beside it,
    /// for <c>scripts/accept</c> once a person has read it.
    /// </summary>
    public static void Matches(string folder, string name, string text)
    {
        var verified = Path.Combine(folder, name + Verified);
        var received = Path.Combine(folder, name + Received);
        var accepted = File.Exists(verified) ? File.ReadAllText(verified) : null;
        if (accepted == text)
        {
            File.Delete(received);
            return;
        }

        File.WriteAllText(received, text, new UTF8Encoding(false));
        Assert.Fail(
            accepted is null
                ? $"Nothing is accepted yet for {verified}. Read {received}, then run scripts/accept."
                : $"{received} differs from what was accepted: {FirstDifference(accepted, text)} If the new text is right, run "
                    + $"scripts/accept."
        );
    }

    static string FirstDifference(string accepted, string text)
    {
        var (before, after) = (accepted.Split('\n'), text.Split('\n'));
        var line = Enumerable
            .Range(0, Math.Max(before.Length, after.Length))
            .First(i => before.ElementAtOrDefault(i) != after.ElementAtOrDefault(i));
        return FormattableString.Invariant(
            $"line {line + 1} was '{before.ElementAtOrDefault(line)}' and is '{after.ElementAtOrDefault(line)}'."
        );
    }
}
