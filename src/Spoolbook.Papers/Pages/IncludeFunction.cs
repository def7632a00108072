using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Pages;

/// <summary>
/// <c>include 'part.html' title: 'Rolls'</c>: runs another template in place, so that what it prints keeps its own file
/// and line. There its arguments are <c>$.title</c>.
/// </summary>
sealed class IncludeFunction(ITemplateSource source) : IScriptCustomFunction
{
    readonly Dictionary<string, ParsedTemplate> _parsed = new(StringComparer.Ordinal);

    public int RequiredParameterCount => 1;

    public int ParameterCount => 1;

    public ScriptVarParamKind VarParamKind => ScriptVarParamKind.Direct;

    public Type ReturnType => typeof(object);

    public ScriptParameterInfo GetParameterInfo(int index) =>
        index == 0 ? new ScriptParameterInfo(typeof(string), "template_name") : new ScriptParameterInfo(typeof(object), "value");

    public int GetParameterIndexByName(string name) => throw new NotSupportedException("The arguments of include have no fixed names.");

    public object? Invoke(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement)
    {
        ArgumentNullException.ThrowIfNull(callerContext);
        var page = (PageContext)context;
        var name = arguments.Count > 0 && arguments[0] is string text ? text : "";
        var template = Find(name, callerContext, page);
        var given = new IncludeArguments();
        foreach (var key in arguments.ScriptObject.GetMembers().Where(key => key != "size"))
        {
            // Nested arguments could be piled up into something that takes for ever to compare.
            if (arguments.ScriptObject[key] is IncludeArguments)
            {
                throw new MistakeInTemplate(callerContext.Span, Sentence.Of("paper/template.value.arguments", ("key", key)));
            }

            given.SetValue(key, arguments.ScriptObject[key], readOnly: false);
        }
        page.Include(template, given, callerContext);
        return null;
    }

    public ValueTask<object?> InvokeAsync(
        TemplateContext context,
        ScriptNode? callerContext,
        ScriptArray arguments,
        ScriptBlockStatement? blockStatement
    ) => ValueTask.FromResult(Invoke(context, callerContext, arguments, blockStatement));

    sealed class IncludeArguments : ScriptArray;

    ParsedTemplate Find(string name, ScriptNode caller, PageContext page)
    {
        if (_parsed.TryGetValue(name, out var known))
        {
            return known;
        }

        if (!IsPlainName(name))
        {
            throw new MistakeInTemplate(caller.Span, Sentence.Of("paper/template.value.include-name", ("name", name)));
        }

        if (source.Find(name) is not { } found)
        {
            throw new MistakeInTemplate(caller.Span, Sentence.Of("paper/template.value.include-missing", ("name", name)));
        }

        if (found.Refused is { } reason)
        {
            throw new MistakeInTemplate(
                caller.Span,
                Sentence.Of("paper/template.value.include-refused", ("name", name), ("reason", reason))
            );
        }

        var before = page.Faults.Count;
        var parsed = TemplateParser.Parse(found, page.Faults);
        if (page.Faults.Count > before || parsed is null)
        {
            throw new MistakeInTemplate(caller.Span, Sentence.Of("paper/template.value.include-faults", ("name", name)));
        }

        return _parsed[name] = parsed;
    }

    /// <summary>Letters, digits, dots, hyphens and underscores: no such name leads out of the folder.</summary>
    public static bool IsPlainName(string name) =>
        name.Length is > 0 and <= 80 && name[0] != '.' && name.All(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '_');
}
