using Spoolbook.Reading.Editing;

namespace Spoolbook.Reading.Beginning;

/// <summary>Words as YAML writes them, for code that begins a file.</summary>
public static class YamlWords
{
    /// <summary>A text as a value: in quotes where YAML would read something else.</summary>
    public static string Of(string text) => YamlQuoting.Quote(text);
}
