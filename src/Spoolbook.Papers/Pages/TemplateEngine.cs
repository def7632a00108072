using System.Diagnostics.CodeAnalysis;
using System.Xml;
using System.Xml.Linq;
using Scriban.Runtime;
using Scriban.Syntax;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Pages;

/// <summary>Runs a template over the facts of a paper. A fault in a template is a value, never an exception.</summary>
public static class TemplateEngine
{
    /// <summary>
    /// Renders the template of this name. The facts are any object; the template sees its properties, and theirs, in
    /// snake_case.
    /// </summary>
    public static PageResult Render(ITemplateSource source, string name, object facts) => Fill(source, name, facts).Read();

    /// <summary>Runs the template of this name over the facts, and leaves what it printed to be read.</summary>
    internal static FilledTemplate Fill(ITemplateSource source, string name, object facts) =>
        Fill(source, name, facts, VocabularyCheck.Faults);

    /// <summary>Renders the template of a page that works by a script, of which there is no PDF.</summary>
    public static PageResult RenderScreen(ITemplateSource source, string name, object facts) =>
        Fill(source, name, facts, ScreenCheck.Faults).Read();

    static FilledTemplate Fill(ITemplateSource source, string name, object facts, Func<PageDocument, IReadOnlyList<TemplateFault>> check)
    {
        if (source.Find(name) is not { } text)
        {
            return Failed([new TemplateFault(name, 1, 1, Sentence.Of("paper/template.value.no-such-template"))]);
        }

        var faults = new List<TemplateFault>();
        if (TemplateParser.Parse(text, faults) is not { } template)
        {
            return Failed(faults);
        }

        var output = new PageOutput();
        faults.AddRange(Run(source, template, output, facts));
        return faults.Count > 0 ? Failed(faults) : new FilledTemplate(output.ToString(), () => Read(output, check));

        static FilledTemplate Failed(List<TemplateFault> faults) => new("", () => PageResult.Failed(faults));
    }

    [UnconditionalSuppressMessage("Trimming", "IL2026", Justification = "The native program keeps all facts, which are of this room.")]
    static List<TemplateFault> Run(ITemplateSource source, ParsedTemplate template, PageOutput output, object facts)
    {
        var context = new PageContext(source, template, output);
        var values = new ScriptObject();
        values.Import(facts, ScriptMemberImportFlags.Property, null, context.MemberRenamer);
        context.PushGlobal(values);
        try
        {
            context.Evaluate(template.Template.Page, aliasReturnedFunction: false);
            return [];
        }
        catch (ScriptRuntimeException mistake)
        {
            // Faults of an included template say more than the line that includes it.
            return context.Faults.Count > 0 ? context.Faults : [TemplateParser.Fault(mistake.Span, MistakeInTemplate.Said(mistake))];
        }
    }

    static PageResult Read(PageOutput output, Func<PageDocument, IReadOnlyList<TemplateFault>> check)
    {
        var settings = new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null };
        try
        {
            var text = output.ToString();
            if (TooDeep(text, settings) is { } deep)
            {
                return PageResult.Failed([
                    new TemplateFault(
                        output.Place(deep.Line, deep.Column),
                        Sentence.Of("paper/template.value.elements-too-deep", ("most", VocabularyCheck.MaximumDepth))
                    ),
                ]);
            }

            using var reader = XmlReader.Create(new StringReader(text), settings);
            var document = XDocument.Load(reader, LoadOptions.PreserveWhitespace | LoadOptions.SetLineInfo);
            var page = new PageDocument(document.Root!, output);
            var faults = check(page);
            return faults.Count > 0 ? PageResult.Failed(faults) : PageResult.Of(page);
        }
        catch (XmlException mistake)
        {
            var place = output.Place(mistake.LineNumber, mistake.LinePosition);
            return PageResult.Failed([
                new TemplateFault(place, Sentence.Of("paper/template.value.not-well-formed", ("why", WithoutPosition(mistake.Message)))),
            ]);
        }
    }

    static (int Line, int Column)? TooDeep(string text, XmlReaderSettings settings)
    {
        const int Most = VocabularyCheck.MaximumDepth + PictureCheck.MostDepth;
        if (!XmlDepth.MayBeTooDeep(text, Most))
        {
            return null;
        }

        using var shallow = XmlReader.Create(new StringReader(text), settings);
        return XmlDepth.TooDeep(shallow, Most);
    }

    /// <summary>The message without its position in the output, which means nothing to the template's author.</summary>
    static string WithoutPosition(string message)
    {
        var position = message.LastIndexOf(" Line ", StringComparison.Ordinal);
        return position < 0 ? message : message[..position];
    }
}
