namespace Spoolbook.Reading.Schemas;

/// <summary>How the value of a tolerance may be written.</summary>
/// <param name="What">What it is: <c>a length of film</c>.</param>
/// <param name="Pattern">How it is written as text: a regular expression.</param>
/// <param name="MostNumber">The most that it can be where it is a bare number; null where a bare number is none.</param>
public sealed record RuleForm(string What, string Pattern, decimal? MostNumber);
