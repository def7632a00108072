using Scriban.Parsing;
using Scriban.Syntax;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Pages;

/// <summary>A mistake of a template that shows when it runs, with what there is to say about it in words of ours.</summary>
sealed class MistakeInTemplate(SourceSpan span, Sentence description) : ScriptRuntimeException(span, description.ToString())
{
    /// <summary>What a mistake is; in English alone where the engine itself says it.</summary>
    public static Sentence Said(ScriptRuntimeException mistake) =>
        mistake is MistakeInTemplate ours ? ours.Description : Sentence.Plain(mistake.OriginalMessage);

    Sentence Description { get; } = description;
}
