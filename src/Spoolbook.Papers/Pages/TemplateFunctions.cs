using System.Collections;
using System.Diagnostics.CodeAnalysis;
using System.Text;
using Scriban;
using Scriban.Functions;
using Scriban.Parsing;
using Scriban.Runtime;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Pages;

/// <summary>
/// The functions that a template may call, for lists and texts. None of them reads the clock, draws random numbers,
/// runs a pattern, or makes something much longer than its input.
/// </summary>
static class TemplateFunctions
{
    static readonly string[] OfLists = ["size", "first", "last", "contains", "limit", "offset", "reverse"];

    static readonly string[] OfTexts =
    [
        "size",
        "contains",
        "starts_with",
        "ends_with",
        "upcase",
        "downcase",
        "capitalize",
        "strip",
        "empty",
        "whitespace",
    ];

    static readonly Lazy<(ScriptObject Lists, ScriptObject Texts)> Chosen = new(Choose);

    public static ScriptObject Create(IncludeFunction include)
    {
        var functions = new ScriptObject();
        functions.SetValue("array", Chosen.Value.Lists, readOnly: true);
        functions.SetValue("string", Chosen.Value.Texts, readOnly: true);
        functions.SetValue("include", include, readOnly: true);
        return functions;
    }

    /// <summary>The texts of a list with a separator. The only function that makes a text longer, so it has a limit.</summary>
    static string Join(TemplateContext context, SourceSpan span, IEnumerable list, string between)
    {
        const int MostJoined = 100_000;
        var joined = new StringBuilder();
        var first = true;
        foreach (var item in list)
        {
            joined.Append(first ? "" : between).Append(context.ObjectToString(item));
            first = false;
            if (joined.Length > MostJoined)
            {
                throw new MistakeInTemplate(span, Sentence.Of("paper/template.value.joined-too-long"));
            }
        }
        return joined.ToString();
    }

    [UnconditionalSuppressMessage("Trimming", "IL2026", Justification = "What is imported is a method of this class.")]
    static (ScriptObject Lists, ScriptObject Texts) Choose()
    {
        var lists = Choose(new ArrayFunctions(), OfLists);
        lists.Import("join", Join);
        lists.IsReadOnly = true;
        var texts = Choose(new StringFunctions(), OfTexts);
        texts.IsReadOnly = true;
        return (lists, texts);
    }

    // The engine's other functions are not even made: it looks each of them up by name, which takes a fair part of a start.
    static ScriptObject Choose(ScriptObject from, string[] names)
    {
        var chosen = new ScriptObject();
        foreach (var name in names)
        {
            chosen.SetValue(name, from[name], readOnly: true);
        }

        return chosen;
    }
}
