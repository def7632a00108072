using Scriban.Syntax;
using Spoolbook.Shoot.Findings;

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
            Forbid(node, Sentence.Of("paper/template.value.calculates"));
        }

        base.Visit(node);
    }

    public override void Visit(ScriptUnaryExpression node)
    {
        if (node.Operator != ScriptUnaryOperator.Not)
        {
            Forbid(node, Sentence.Of("paper/template.value.calculates"));
        }

        base.Visit(node);
    }

    public override void Visit(ScriptAssignExpression node)
    {
        if (node.Target is not ScriptVariable)
        {
            Forbid(node, Sentence.Of("paper/template.value.sets"));
        }

        base.Visit(node);
    }

    public override void Visit(ScriptIncrementDecrementExpression node) => Forbid(node, Sentence.Of("paper/template.value.counts"));

    public override void Visit(ScriptInterpolatedStringExpression node) => Forbid(node, Sentence.Of("paper/template.value.interpolated"));

    public override void Visit(ScriptArrayInitializerExpression node) => Forbid(node, Sentence.Of("paper/template.value.makes-list"));

    public override void Visit(ScriptObjectInitializerExpression node) => Forbid(node, Sentence.Of("paper/template.value.makes-group"));

    public override void Visit(ScriptWhileStatement node) => Forbid(node, Sentence.Of("paper/template.value.while"));

    public override void Visit(ScriptTableRowStatement node) => Forbid(node, Sentence.Of("paper/template.value.tablerow"));

    public override void Visit(ScriptCaptureStatement node) => Forbid(node, Sentence.Of("paper/template.value.capture"));

    public override void Visit(ScriptWrapStatement node) => Forbid(node, Sentence.Of("paper/template.value.not-allowed", ("word", "wrap")));

    public override void Visit(ScriptWithStatement node) => Forbid(node, Sentence.Of("paper/template.value.with"));

    public override void Visit(ScriptImportStatement node) =>
        Forbid(node, Sentence.Of("paper/template.value.not-allowed", ("word", "import")));

    public override void Visit(ScriptThisExpression node) =>
        Forbid(node, Sentence.Of("paper/template.value.not-allowed", ("word", "this")));

    public override void Visit(ScriptFunction node) => Forbid(node, Sentence.Of("paper/template.value.function"));

    public override void Visit(ScriptAnonymousFunction node) => Forbid(node, Sentence.Of("paper/template.value.function"));

    void Forbid(ScriptNode node, Sentence reason) => Faults.Add(TemplateParser.Fault(node.Span, reason));
}
