namespace Spoolbook.Reading.Tests.Schemas;

/// <summary>The blocks of a schema's text: from the line that opens a map or a list to the one that closes it.</summary>
static class SchemaBlocks
{
    const int Longest = 5;

    /// <summary>The blocks of more than five lines that the text has more than once.</summary>
    public static IEnumerable<string> Twice(string text)
    {
        var lines = text.TrimEnd().Split('\n');
        return from opening in Enumerable.Range(0, lines.Length)
               where lines[opening][^1] is '{' or '['
               let indent = IndentOf(lines[opening])
               let length = Array.FindIndex(lines, opening + 1, line => IndentOf(line) == indent) - opening + 1
               where length > Longest
               group opening by string.Join('\n', lines[(opening + 1)..(opening + length - 1)].Select(line => line[indent..])) into same
               where same.Count() > 1
               select $"{same.Count()} times, first in line {same.First() + 1}:\n{same.Key}";
    }

    static int IndentOf(string line) => line.Length - line.TrimStart().Length;
}
