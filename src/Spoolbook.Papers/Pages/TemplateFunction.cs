using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Spoolbook.Papers.Pages;

/// <summary>A function that a template may call. The engine makes the arguments fit the parameters, or says that they do not.</summary>
sealed class TemplateFunction(Type result, TemplateParameter[] parameters, Func<TemplateContext, SourceSpan, ScriptArray, object?> run)
    : IScriptCustomFunction
{
    public int RequiredParameterCount => parameters.Length;

    public int ParameterCount => parameters.Length;

    public ScriptVarParamKind VarParamKind => ScriptVarParamKind.None;

    public Type ReturnType => result;

    public ScriptParameterInfo GetParameterInfo(int index) => new(parameters[index].Kind, parameters[index].Name);

    public object? Invoke(
        TemplateContext context,
        ScriptNode? callerContext,
        ScriptArray arguments,
        ScriptBlockStatement? blockStatement
    ) => run(context, callerContext?.Span ?? context.CurrentSpan, arguments);

    public ValueTask<object?> InvokeAsync(
        TemplateContext context,
        ScriptNode? callerContext,
        ScriptArray arguments,
        ScriptBlockStatement? blockStatement
    ) => ValueTask.FromResult(Invoke(context, callerContext, arguments, blockStatement));
}
