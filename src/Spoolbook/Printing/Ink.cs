namespace Spoolbook.Printing;

/// <summary>Colour for a terminal, or none, decided in one place.</summary>
internal readonly record struct Ink(bool Colour)
{
    public string Bold(string text) => Wrap("1", text);

    public string Dim(string text) => Wrap("2", text);

    public string Red(string text) => Wrap("1;31", text);

    public string Yellow(string text) => Wrap("1;33", text);

    public string Blue(string text) => Wrap("1;36", text);

    // Film's four fates, in colours that are read on a dark screen and on a light one; none of them is bright.
    public string Good(string text) => Wrap("32", text);

    public string Hold(string text) => Wrap("35", text);

    public string NoGood(string text) => Wrap("31", text);

    public string Waste(string text) => Wrap("2", text);

    /// <summary>Columns that a text takes, without its colours.</summary>
    public static int WidthOf(string text)
    {
        var width = 0;
        for (var at = 0; at < text.Length; at++)
        {
            if (text[at] == '\u001b')
            {
                at = text.IndexOf('m', at);
                continue;
            }

            width++;
        }

        return width;
    }

    public string Green(string text) => Wrap("32", text);

    string Wrap(string code, string text) => Colour ? $"\u001b[{code}m{text}\u001b[0m" : text;
}
