namespace Spoolbook.Printing;

/// <summary>Colour for a terminal, or none, decided in one place.</summary>
internal readonly record struct Ink(bool Colour)
{
    public string Bold(string text) => Wrap("1", text);

    public string Dim(string text) => Wrap("2", text);

    public string Red(string text) => Wrap("1;31", text);

    public string Yellow(string text) => Wrap("1;33", text);

    public string Blue(string text) => Wrap("1;36", text);

    public string Green(string text) => Wrap("32", text);

    string Wrap(string code, string text) => Colour ? $"\u001b[{code}m{text}\u001b[0m" : text;
}
