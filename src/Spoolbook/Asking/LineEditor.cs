using Spoolbook.Entry.Lines;

namespace Spoolbook.Asking;

/// <summary>Lines typed on a terminal: the arrows go through the line and through those before, Tab completes names.</summary>
/// <param name="key">The next key.</param>
internal sealed class LineEditor(Func<ConsoleKeyInfo> key, TextWriter output, int width) : ILineSource
{
    readonly List<string> _history = [];

    public string? Read(string prompt, Func<LineContext?> context)
    {
        var line = new EditedLine(_history, text => context() is { } known ? LineCompletion.Of(text, known) : []);
        while (true)
        {
            Show(prompt, line);
            switch (line.Press(key()))
            {
                case KeyResult.Done:
                    output.WriteLine();
                    if (line.Text.Trim().Length > 0)
                    {
                        _history.Add(line.Text);
                    }

                    return line.Text;
                case KeyResult.End:
                    output.WriteLine();
                    return null;
            }
        }
    }

    // A line longer than the terminal is shown around the cursor.
    void Show(string prompt, EditedLine line)
    {
        var room = Math.Max(8, width - prompt.Length - 1);
        var from = Math.Max(0, line.At - room);
        var text = line.Text[from..Math.Min(line.Text.Length, from + room)];
        var back = text.Length - (line.At - from);
        output.Write($"\r{prompt}{Printing.Plain.Text(text)}\u001b[K{(back > 0 ? $"\u001b[{back}D" : "")}");
        output.Flush();
    }
}
