using System.Collections.Concurrent;
using Scriban;
using Scriban.Parsing;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Texts;

namespace Spoolbook.Papers.Pages;

/// <summary>Parses a template's text, to something that can run or to its faults.</summary>
static class TemplateParser
{
    const int MaximumLength = 1_000_000;
    const int MaximumNesting = 60;

    // Many papers have one template, which runs as often as it is wanted once it is parsed. A department that edits its own
    // beside `watch` has a new text each time, so there is an end to what is kept.
    const int MostKept = 64;
    const int LongestKept = 100_000;

    static readonly ConcurrentDictionary<TemplateText, ParsedTemplate> Kept = new();

    static readonly HashSet<string> Openers = ["if", "for", "while", "case", "func", "capture", "wrap", "with", "tablerow", "do"];

    public static ParsedTemplate? Parse(TemplateText source, List<TemplateFault> faults)
    {
        if (Kept.TryGetValue(source, out var known))
        {
            return known;
        }

        var parsed = ParseAnew(source, faults);
        if (parsed is not null && source.Text.Length <= LongestKept)
        {
            if (Kept.Count >= MostKept)
            {
                Kept.Clear();
            }

            Kept[source] = parsed;
        }

        return parsed;
    }

    static ParsedTemplate? ParseAnew(TemplateText source, List<TemplateFault> faults)
    {
        if (source.Refused is { } reason)
        {
            faults.Add(new TemplateFault(source.File, 1, 1, reason));
            return null;
        }
        if (source.Text.Length > MaximumLength)
        {
            faults.Add(new TemplateFault(source.File, 1, 1, Sentence.Of("paper/template.value.too-long")));
            return null;
        }
        var text = source.Text.ReplaceLineEndings("\n").TrimStart('\uFEFF');
        if ((Stray(text, source.File) ?? TooDeep(text, source.File)) is { } refused)
        {
            faults.Add(refused);
            return null;
        }

        var template = Template.Parse(text, source.File, new ParserOptions { ExpressionDepthLimit = MaximumNesting });
        foreach (var message in template.Messages.Where(m => m.Type == ParserMessageType.Error))
        {
            // The engine says it, in English alone.
            faults.Add(Fault(message.Span, Sentence.Plain(message.Message)));
        }
        if (template.HasErrors)
        {
            return null;
        }

        var fence = new TemplateFence();
        fence.Visit(template.Page);
        faults.AddRange(fence.Faults);
        return fence.Faults.Count > 0 ? null : new ParsedTemplate(source.File, text, template);
    }

    public static TemplateFault Fault(SourceSpan span, Sentence reason) =>
        new(span.FileName ?? "", span.Start.Line + 1, span.Start.Column + 1, reason);

    /// <summary>A character that no editor shows and every page would carry.</summary>
    static TemplateFault? Stray(string text, string file)
    {
        if (TextCharacters.FirstRefused(text) is not { } code)
        {
            return null;
        }

        var before = text.AsSpan(0, TextCharacters.IndexOfRefused(text));
        return new TemplateFault(
            file,
            before.Count('\n') + 1,
            before.Length - before.LastIndexOf('\n'),
            Sentence.Of("paper/template.value.character", ("number", TextCharacters.Number(code)), ("name", TextCharacters.Name(code)))
        );
    }

    /// <summary>Nested blocks use up the parser's stack, which no limit of the engine guards, so they are counted first.</summary>
    static TemplateFault? TooDeep(string text, string file)
    {
        var depth = 0;
        foreach (var token in new Lexer(text, file))
        {
            if (token.Type != TokenType.Identifier)
            {
                continue;
            }

            var word = token.GetText(text);
            if (Openers.Contains(word))
            {
                depth++;
            }
            else if (word == "end")
            {
                depth--;
            }

            if (depth > MaximumNesting)
            {
                return new TemplateFault(
                    file,
                    token.Start.Line + 1,
                    token.Start.Column + 1,
                    Sentence.Of("paper/template.value.blocks-too-deep", ("most", MaximumNesting))
                );
            }
        }
        return null;
    }
}
