using System.Globalization;
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
        var room = Math.Max(8, width - TerminalCells.Of(prompt) - 1);
        var before = Elements(Printing.Plain.Text(line.Text[..line.At])).Reverse();
        var shown = string.Concat(Fitting(before, room).Reverse());
        var after = string.Concat(Fitting(Elements(Printing.Plain.Text(line.Text[line.At..])), room - TerminalCells.Of(shown)));
        var back = TerminalCells.Of(after);
        output.Write($"\r{prompt}{shown}{after}\u001b[K{(back > 0 ? $"\u001b[{back}D" : "")}");
        output.Flush();
    }

    static IEnumerable<string> Elements(string text)
    {
        var each = StringInfo.GetTextElementEnumerator(text);
        while (each.MoveNext())
        {
            yield return each.GetTextElement();
        }
    }

    static IEnumerable<string> Fitting(IEnumerable<string> elements, int room)
    {
        var used = 0;
        return elements.TakeWhile(element => (used += TerminalCells.Of(element)) <= room);
    }
}
