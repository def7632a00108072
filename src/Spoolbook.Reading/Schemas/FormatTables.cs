using System.Text;
using Spoolbook.Reading.Keys;

namespace Spoolbook.Reading.Schemas;

/// <summary>The tables of keys as Markdown, for the page about the file format.</summary>
public static class FormatTables
{
    /// <summary>A table for each kind of map.</summary>
    public static string Markdown()
    {
        var text = new StringBuilder();
        foreach (var table in KeyTables.All)
        {
            text.Append("### Keys of ").Append(table.Owner).Append("\n\n");
            text.Append("| key | needed | what | example |\n|---|---|---|---|\n");
            foreach (var key in table.Keys)
            {
                text.Append($"| `{key.Name}` | {Needed(table, key)} | {Cell(key.Says)} | {Example(key)} |\n");
            }

            text.Append('\n');
        }

        return text.ToString();
    }

    static string Needed(KeyTable table, Key key) => key.Required ? "yes" : table.Either.Contains(key) ? "one of them" : "";

    static string Example(Key key) => key switch
    {
        EntriesKey entries => string.Join(", ", entries.Kinds.Select(k => $"`- {k.Word}: …`")),
        _ when key.Example.Length > 0 => $"`{Cell(key.Example)}`",
        _ => "",
    };

    static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
