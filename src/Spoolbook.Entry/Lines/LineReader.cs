using Spoolbook.Shoot.Findings;

namespace Spoolbook.Entry.Lines;

/// <summary>Reads lines of the short form.</summary>
public static class LineReader
{
    /// <summary>What a line says, or why it cannot be written. A line that is empty, or a comment, says nothing.</summary>
    /// <param name="file">What findings call the file that it is in.</param>
    /// <param name="line">Its number there, from 1.</param>
    public static LineRead Read(string text, string file, int line, LineContext context) => throw new NotSupportedException();
}
