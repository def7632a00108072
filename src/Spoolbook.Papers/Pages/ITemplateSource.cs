namespace Spoolbook.Papers.Pages;

/// <summary>The source of templates. The engine asks only for plain file names; the caller decides what is behind a name.</summary>
public interface ITemplateSource
{
    /// <summary>The template of this name, or null where there is none.</summary>
    TemplateText? Find(string name);
}
