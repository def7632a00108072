using System.Collections;
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
    static readonly Lazy<(ScriptObject Lists, ScriptObject Texts)> Chosen = new(Choose);

    public static ScriptObject Create(IncludeFunction include)
    {
        var functions = new ScriptObject();
        functions.SetValue("array", Chosen.Value.Lists, readOnly: true);
        functions.SetValue("string", Chosen.Value.Texts, readOnly: true);
        functions.SetValue("include", include, readOnly: true);
        return functions;
    }

    // Not those of the engine's own tables: it makes each of a delegate, and where the program is native, its first look at one costs
    // a list of all methods that there are.
    static (ScriptObject Lists, ScriptObject Texts) Choose()
    {
        var list = new TemplateParameter("list", typeof(IEnumerable));
        var count = new TemplateParameter("count", typeof(int));
        var text = new TemplateParameter("text", typeof(string));
        var value = new TemplateParameter("value", typeof(string));
        var lists = Object(
            ("size", new(typeof(int), [list], (_, _, given) => ArrayFunctions.Size((IEnumerable)given[0]!))),
            ("first", new(typeof(object), [list], (_, _, given) => ArrayFunctions.First((IEnumerable)given[0]!))),
            ("last", new(typeof(object), [list], (_, _, given) => ArrayFunctions.Last((IEnumerable)given[0]!))),
            (
                "contains",
                new(typeof(bool), [list, new("item", typeof(object))], (_, _, given) =>
                    ArrayFunctions.Contains((IEnumerable)given[0]!, given[1]!)
                )
            ),
            (
                "limit",
                new(typeof(IEnumerable), [list, count], (_, _, given) => ArrayFunctions.Limit((IEnumerable)given[0]!, (int)given[1]!))
            ),
            (
                "offset",
                new(typeof(IEnumerable), [list, count], (_, _, given) => ArrayFunctions.Offset((IEnumerable)given[0]!, (int)given[1]!))
            ),
            ("reverse", new(typeof(IEnumerable), [list], (_, _, given) => ArrayFunctions.Reverse((IEnumerable)given[0]!))),
            (
                "join",
                new(typeof(string), [list, new("between", typeof(string))], (context, span, given) =>
                    Join(context, span, (IEnumerable)given[0]!, (string)given[1]!)
                )
            )
        );
        var texts = Object(
            ("size", new(typeof(int), [text], (_, _, given) => StringFunctions.Size((string)given[0]!))),
            ("contains", new(typeof(bool), [text, value], (_, _, given) => StringFunctions.Contains((string)given[0]!, (string)given[1]!))),
            (
                "starts_with",
                new(typeof(bool), [text, value], (_, _, given) => StringFunctions.StartsWith((string)given[0]!, (string)given[1]!))
            ),
            (
                "ends_with",
                new(typeof(bool), [text, value], (_, _, given) => StringFunctions.EndsWith((string)given[0]!, (string)given[1]!))
            ),
            ("upcase", new(typeof(string), [text], (_, _, given) => StringFunctions.Upcase((string)given[0]!))),
            ("downcase", new(typeof(string), [text], (_, _, given) => StringFunctions.Downcase((string)given[0]!))),
            ("capitalize", new(typeof(string), [text], (_, _, given) => StringFunctions.Capitalize((string)given[0]!))),
            ("strip", new(typeof(string), [text], (_, _, given) => StringFunctions.Strip((string)given[0]!))),
            ("empty", new(typeof(bool), [text], (_, _, given) => StringFunctions.Empty((string)given[0]!))),
            ("whitespace", new(typeof(bool), [text], (_, _, given) => StringFunctions.Whitespace((string)given[0]!)))
        );
        return (lists, texts);
    }

    static ScriptObject Object(params ReadOnlySpan<(string Name, TemplateFunction Function)> functions)
    {
        var chosen = new ScriptObject();
        foreach (var (name, function) in functions)
        {
            chosen.SetValue(name, function, readOnly: true);
        }

        chosen.IsReadOnly = true;
        return chosen;
    }

    /// <summary>The texts of a list with a separator. The only function that makes a text longer, so it has a limit.</summary>
    static string Join(TemplateContext context, SourceSpan span, IEnumerable? list, string? between)
    {
        const int MostJoined = 100_000;
        var joined = new StringBuilder();
        var first = true;
        foreach (var item in list ?? Array.Empty<object>())
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
}
