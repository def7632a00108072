namespace Spoolbook.Reading.Schemas;

/// <summary>A check, a group or a tolerance, as an editor explains it.</summary>
/// <param name="Description">What it is, in a sentence or two.</param>
public sealed record RuleName(string Name, string Description)
{
    /// <summary>How a tolerance's value is written; null for a check or a group, which take a level.</summary>
    public RuleForm? Form { get; init; }

    public string Example { get; init; } = "";
}
