namespace Spoolbook.Reading.Schemas;

/// <summary>A check, a group or a tolerance, as an editor explains it.</summary>
/// <param name="Description">What it is, in a sentence or two.</param>
public sealed record RuleName(string Name, string Description)
{
    /// <summary>How its value may be written, where that is its own.</summary>
    public RuleForm? Form { get; init; }

    /// <summary>How its value may look.</summary>
    public string Example { get; init; } = "";
}
