using Scriban.Syntax;

namespace Spoolbook.Papers.Pages;

/// <summary>
/// What a template must not do. It chooses and arranges but does not calculate: every number is computed in one place,
/// and without calculation a template cannot fill the memory.
/// </summary>
sealed class TemplateFence : ScriptVisitor
{
    static readonly HashSet<ScriptBinaryOperator> Comparisons =
    [
        ScriptBinaryOperator.CompareEqual,
        ScriptBinaryOperator.CompareNotEqual,
        ScriptBinaryOperator.CompareLess,
        ScriptBinaryOperator.CompareLessOrEqual,
        ScriptBinaryOperator.CompareGreater,
        ScriptBinaryOperator.CompareGreaterOrEqual,
        ScriptBinaryOperator.And,
        ScriptBinaryOperator.Or,
        ScriptBinaryOperator.EmptyCoalescing,
    ];

    public List<TemplateFault> Faults { get; } = [];

    public override void Visit(ScriptBinaryExpression node)
    {
        if (!Comparisons.Contains(node.Operator))
        {
            Forbid(node, "a template does not calculate: give it the ready value");
        }

        base.Visit(node);
    }

    public override void Visit(ScriptUnaryExpression node)
    {
        if (node.Operator != ScriptUnaryOperator.Not)
        {
            Forbid(node, "a template does not calculate: give it the ready value");
        }

        base.Visit(node);
    }

    public override void Visit(ScriptAssignExpression node)
    {
        if (node.Target is not ScriptVariable)
        {
            Forbid(node, "only a variable of the template's own can be set");
        }

        base.Visit(node);
    }

    public override void Visit(ScriptIncrementDecrementExpression node) => Forbid(node, "a template does not count");

    public override void Visit(ScriptInterpolatedStringExpression node) =>
        Forbid(node, "interpolated texts are not allowed: write the text and the values one after the other");

    public override void Visit(ScriptArrayInitializerExpression node) =>
        Forbid(node, "a template makes no lists of its own: lists come with the facts");

    public override void Visit(ScriptObjectInitializerExpression node) =>
        Forbid(node, "a template makes no groups of values of its own: they come with the facts");

    public override void Visit(ScriptWhileStatement node) => Forbid(node, "'while' is not allowed: use 'for' over a list");

    public override void Visit(ScriptTableRowStatement node) => Forbid(node, "'tablerow' is not allowed: use 'for'");

    public override void Visit(ScriptCaptureStatement node) =>
        Forbid(node, "'capture' is not allowed: put the part into a file of its own and include it");

    public override void Visit(ScriptWrapStatement node) => Forbid(node, "'wrap' is not allowed");

    public override void Visit(ScriptWithStatement node) => Forbid(node, "'with' is not allowed: name the value in full");

    public override void Visit(ScriptImportStatement node) => Forbid(node, "'import' is not allowed");

    public override void Visit(ScriptThisExpression node) => Forbid(node, "'this' is not allowed");

    public override void Visit(ScriptFunction node) =>
        Forbid(node, "functions cannot be defined: put the part into a file of its own and include it");

    public override void Visit(ScriptAnonymousFunction node) =>
        Forbid(node, "functions cannot be defined: put the part into a file of its own and include it");

    void Forbid(ScriptNode node, string reason) => Faults.Add(TemplateParser.Fault(node.Span, reason));
}
