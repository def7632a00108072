using Spoolbook.Shoot.Texts;

namespace Spoolbook.Reading;

/// <summary>What the user wrote, made fit for a message: one line, and not too long.</summary>
static class Quote
{
    const int MostShown = 40;

    public static string Short(string text)
    {
        var line = TextCharacters.Without(string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c))).Trim();
        if (line.Length <= MostShown)
        {
            return line;
        }

        // Keeps both halves of a surrogate pair together.
        var cut = char.IsHighSurrogate(line[MostShown - 1]) ? MostShown - 1 : MostShown;
        return line[..cut] + "…";
    }
}
