using Scriban.Functions;
using Scriban.Runtime;

namespace Spoolbook.Papers.Pages;

/// <summary>
/// The functions that a template may call: to look at a list or a text. None of them tells the time, draws lots, runs a
/// pattern, or makes something much longer than what it is given.
/// </summary>
static class TemplateFunctions
{
    static readonly string[] OfLists = ["size", "first", "last", "contains", "limit", "offset", "reverse", "join"];

    static readonly string[] OfTexts =
        ["size", "contains", "starts_with", "ends_with", "upcase", "downcase", "capitalize", "strip", "empty", "whitespace"];

    static readonly Lazy<(ScriptObject Lists, ScriptObject Texts)> Chosen = new(() =>
    {
        var all = new BuiltinFunctions();
        return (Choose(all, "array", OfLists), Choose(all, "string", OfTexts));
    });

    public static ScriptObject Create(IncludeFunction include)
    {
        var functions = new ScriptObject();
        functions.SetValue("array", Chosen.Value.Lists, readOnly: true);
        functions.SetValue("string", Chosen.Value.Texts, readOnly: true);
        functions.SetValue("include", include, readOnly: true);
        return functions;
    }

    static ScriptObject Choose(BuiltinFunctions all, string group, string[] names)
    {
        var from = all[group] as ScriptObject
            ?? throw new InvalidOperationException($"The template engine has no functions of '{group}'.");
        var chosen = new ScriptObject();
        foreach (string name in names) chosen.SetValue(name, from[name], readOnly: true);
        chosen.IsReadOnly = true;
        return chosen;
    }
}
