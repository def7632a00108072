using Spoolbook.Film.Reckonings;

namespace Spoolbook.Printing;

/// <summary>A sum for people: the answers, and below them the working.</summary>
internal static class ReckoningPrinter
{
    public static void Print(Reckoning reckoning, CommandEnvironment around)
    {
        var ink = new Ink(around.Colour);
        around.Out.WriteLine(ink.Bold(reckoning.Title));
        around.Out.WriteLine();
        Print(reckoning.Answers, ink.Bold, ink, around.Out);
        around.Out.WriteLine();
        around.Out.WriteLine(ink.Dim("How it is worked out"));
        around.Out.WriteLine();
        Print(reckoning.Steps, text => text, ink, around.Out);
    }

    static void Print(IReadOnlyCollection<ReckoningLine> lines, Func<string, string> strong, Ink ink, TextWriter output)
    {
        var label = lines.Max(line => line.Label.Length);
        // A sentence in place of a value must not push every unit to the right.
        var value = lines.Where(line => line.Unit.Length > 0).Select(line => line.Value.Length).DefaultIfEmpty(0).Max();
        foreach (var line in lines)
        {
            // Padded before colouring: an escape sequence has length but no width.
            var unit = line.Unit.Length == 0 ? "" : new string(' ', value - line.Value.Length + 2) + ink.Dim(line.Unit);
            output.WriteLine($"  {line.Label.PadRight(label)}  {strong(line.Value)}{unit}");
        }
    }
}
