using Spoolbook.Entry.Lines;

namespace Spoolbook.Asking;

/// <summary>Lines from a pipe or a file, in which nobody sees a prompt.</summary>
internal sealed class PipedLines(TextReader input) : ILineSource
{
    public string? Read(string prompt, Func<LineContext?> context) => input.ReadLine();
}
