namespace Spoolbook.Papers.Pages;

/// <summary>Where templates come from. The engine asks for plain file names only; what lies behind a name is the caller's.</summary>
public interface ITemplateSource
{
    /// <summary>The template of this name, or null where there is none.</summary>
    TemplateText? Find(string name);
}
