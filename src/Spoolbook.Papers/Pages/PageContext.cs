using System.Collections;
using System.Globalization;
using System.Reflection;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Pages;

/// <summary>
/// One run of a template. Mistakes are errors instead of blanks, and every printed value is escaped here and nowhere
/// else. Steps, inclusions and output are counted, so that a hostile template stops at the same step on every machine.
/// </summary>
sealed class PageContext : TemplateContext
{
    const int MaximumSteps = 2_000_000;
    const int MaximumLoops = 300_000;
    const int MaximumOutput = 8_000_000;
    const int MaximumDepth = 40;

    readonly PageOutput _output;
    readonly HashSet<Markup> _drawn = new(ReferenceEqualityComparer.Instance);
    ParsedTemplate _current;
    SourceSpan _printing;
    int _steps;
    int _free;

    public PageContext(ITemplateSource source, ParsedTemplate template, PageOutput output)
        : base(TemplateFunctions.Create(new IncludeFunction(source)))
    {
        _current = template;
        _output = output;
        StrictVariables = true;
        EnableRelaxedMemberAccess = false;
        EnableRelaxedIndexerAccess = false;
        EnableRelaxedTargetAccess = false;
        EnableRelaxedFunctionAccess = false;
        LoopLimit = MaximumLoops;
        RecursiveLimit = MaximumDepth;
        LimitToString = 0;
        NewLine = "\n";
        MemberFilter = member => member is PropertyInfo;
        PushCulture(CultureInfo.InvariantCulture);
    }

    public List<TemplateFault> Faults { get; } = [];

    public override object? Evaluate(ScriptNode? scriptNode, bool aliasReturnedFunction)
    {
        if (scriptNode is null)
        {
            return null;
        }

        if (++_steps > MaximumSteps)
        {
            throw new MistakeInTemplate(scriptNode.Span, Sentence.Of("paper/template.value.no-end"));
        }

        if (scriptNode is ScriptExpressionStatement { Expression: { } printed })
        {
            _printing = printed.Span;
        }

        if (scriptNode is not ScriptRawStatement raw)
        {
            return base.Evaluate(scriptNode, aliasReturnedFunction);
        }

        Room(raw.Span, raw.Text.Length);
        _output.AddTemplateText(_current, raw.Text.Index, raw.Text.Length);
        return null;
    }

    public override TemplateContext Write(SourceSpan span, object? textAsObject)
    {
        // The engine passes the span of the whole block; use the statement's.
        span = _printing;
        var text = textAsObject switch
        {
            null => "",
            Markup markup => markup.Xml,
            string value => Escaping.Escape(value),
            bool value => value ? "true" : "false",
            IFormattable and (int or long or double or decimal or Enum) => Escaping.Escape(
                ((IFormattable)textAsObject).ToString(null, CultureInfo.InvariantCulture)
            ),
            _ => throw new MistakeInTemplate(span, Sentence.Of("paper/template.value.prints-list")),
        };
        // The first print of a program-made picture does not count against the template: a long shoot has many pictures.
        if (textAsObject is Markup drawn && _drawn.Add(drawn))
        {
            _free += text.Length;
        }

        Room(span, text.Length);
        _output.AddValue(_current, span.Start.Offset, text);
        return this;
    }

    /// <summary>Refuses a list where a text is needed: written out with nested lists, it could grow without end.</summary>
    public override string? ObjectToString(object? value, bool nested = false) =>
        value is not string and IEnumerable
            ? throw new MistakeInTemplate(CurrentSpan, Sentence.Of("paper/template.value.list-as-text"))
            : base.ObjectToString(value, nested);

    public void Include(ParsedTemplate template, ScriptArray arguments, ScriptNode caller)
    {
        var outer = _current;
        EnterRecursive(caller);
        PushLocal();
        try
        {
            SetValue(ScriptVariable.Arguments, arguments, asReadOnly: true);
            _current = template;
            Evaluate(template.Template.Page, aliasReturnedFunction: false);
        }
        finally
        {
            _current = outer;
            PopLocal();
            ExitRecursive(caller);
        }
    }

    void Room(SourceSpan span, int more)
    {
        if (_output.Length + more - _free > MaximumOutput)
        {
            throw new MistakeInTemplate(span, Sentence.Of("paper/template.value.prints-too-much"));
        }
    }
}
