using System.Text;
using Spoolbook.Reading.Forms;
using Spoolbook.Reading.Keys;

namespace Spoolbook.Reading.Schemas;

/// <summary>The tables of keys as Markdown, for the page about the file format.</summary>
public static class FormatTables
{
    public static string Markdown()
    {
        var text = new StringBuilder(
            "# The keys of the production folder\n\nWritten by `scripts/reference-keys` from the keys that the reader itself looks at; "
                + "FORMAT.md says the same in prose.\n\n"
        );
        foreach (var table in KeyTables.All)
        {
            text.Append("## Keys of ").Append(table.Owner.ToString()).Append("\n\n");
            text.Append("| key | needed | what | written as | example |\n|---|---|---|---|---|\n");
            foreach (var key in table.Keys)
            {
                text.Append($"| `{key.Name}` | {Needed(table, key)} | {Cell(key.Description)} | {WrittenAs(key)} | {Example(key)} |\n");
            }

            text.Append('\n');
        }

        return text.ToString().TrimEnd() + "\n";
    }

    static string WrittenAs(Key key) =>
        key switch
        {
            IValueKey { Many: true } many => "one or a list: " + Form(many.Form),
            IValueKey value => Form(value.Form),
            MapKey => "a map",
            MapsKey => "a list of maps",
            INamesKey names => $"a map from {names.Names} to {Form(names.Form)}",
            _ => "a list of entries",
        };

    static string Form(Form form) =>
        form.Json.Words.IsDefaultOrEmpty ? form.What.ToString() : string.Join(", ", form.Json.Words.Select(w => $"`{w}`"));

    static string Needed(KeyTable table, Key key) =>
        key.Required ? "yes"
        : table.Either.Contains(key) ? "one of them"
        : "";

    static string Example(Key key) =>
        key switch
        {
            EntriesKey entries => string.Join(", ", entries.Kinds.Select(k => $"`- {k.Word}: …`")),
            _ when key.Example.Length > 0 => $"`{Cell(key.Example)}`",
            _ => "",
        };

    static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
