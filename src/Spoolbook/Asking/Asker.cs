using Spoolbook.Entry.Lines;

namespace Spoolbook.Asking;

/// <summary>Asks one thing after the other. Where the answers end, every question has its usual one.</summary>
/// <param name="lines">Where the answers come from.</param>
/// <param name="output">Where objections go.</param>
internal sealed class Asker(ILineSource lines, TextWriter output, Func<LineContext?> context)
{
    // Somebody who answers wrongly as often as this is not there.
    const int MostTries = 5;

    /// <summary>An answer; the usual one where nothing is typed.</summary>
    /// <param name="objection">What is wrong with an answer; null where it will do.</param>
    public string Ask(string question, string usual = "", Func<string, string?>? objection = null)
    {
        for (var tries = 0; tries < MostTries; tries++)
        {
            var typed = lines.Read(usual.Length == 0 ? $"{question}: " : $"{question} [{usual}]: ", context);
            var answer = string.IsNullOrWhiteSpace(typed) ? usual : typed.Trim();
            if (typed is null || objection?.Invoke(answer) is not { } why)
            {
                return answer;
            }

            output.WriteLine($"  {why}");
        }

        return usual;
    }

    /// <summary>Yes or no; yes where nothing is typed.</summary>
    public bool Agree(string question) =>
        Ask(question, "yes", answer => IsYes(answer) || IsNo(answer) ? null : "Answer yes or no.") is var said && IsYes(said);

    static bool IsYes(string answer) => answer.ToLowerInvariant() is "yes" or "y";

    static bool IsNo(string answer) => answer.ToLowerInvariant() is "no" or "n";
}
