using System.Text;
using Spoolbook.Reading.Editing;

namespace Spoolbook.Entry.Lines;

/// <summary>What can follow each verb, as Markdown, for the page about the short form.</summary>
public static class ShortFormTables
{
    /// <summary>A table for each verb: the tokens known by their form, then the keys that need their name.</summary>
    public static string Markdown()
    {
        var text = new StringBuilder();
        foreach (var grammar in LineGrammar.All)
        {
            if (grammar.IsPart)
            {
                continue;
            }

            text.Append($"\n### {grammar.Word}\n\n| key | known by its form | by its name |\n|---|---|---|\n");
            foreach (var key in grammar.Table.Keys)
            {
                text.Append($"| `{key.Name}`{Needed(grammar, key)} | {Looks(grammar, key)} | {Said(grammar, key)} |\n");
            }
        }

        return text.ToString();
    }

    /// <summary>What the same things are called elsewhere, in the same order.</summary>
    public static string Elsewhere()
    {
        var text = new StringBuilder("| key | camera report, log sheet | workbook, table | pocket log |\n|---|---|---|---|\n");
        foreach (var part in TakePart.All)
        {
            text.Append($"| `{part.Key}` | {part.Column} | {part.Head} | {part.Button} |\n");
        }

        return text.ToString();
    }

    static string Needed(VerbGrammar grammar, EntryKey key) =>
        key.Required ? ", needed"
        : grammar.Table.Either.Contains(key.Name) ? ", one of these"
        : "";

    static string Looks(VerbGrammar grammar, EntryKey key) =>
        (grammar.Verb, key.Name) switch
        {
            (LineVerb.Take, "scene" or "shot" or "take") => "the slate `1A/4`",
            (LineVerb.Load, "roll") => "the first word",
            (LineVerb.Load, "unit") => "with the lot",
            (_, "note") => "the remark",
            _ => grammar.Forms.FirstOrDefault(f => f.Key == key.Name)?.Looks ?? "",
        };

    static string Said(VerbGrammar grammar, EntryKey key)
    {
        var names = new StringBuilder();
        foreach (var (word, _) in grammar.Aliases.Where(a => a.Key == key.Name))
        {
            names.Append($", `{word}{Value(key)}`");
        }

        return $"`{key.Name}{Value(key)}`{names}";
    }

    static string Value(EntryKey key) => key.Kind == ValueKind.YesNo ? "" : " " + Example(key);

    static string Example(EntryKey key) =>
        key.Many ? key.Example.Trim('[', ']', '"').Replace(", ", ",", StringComparison.Ordinal)
        : key.Example.Contains(' ', StringComparison.Ordinal) && key.Kind != ValueKind.Moment ? $"\"{key.Example}\""
        : key.Example;
}
