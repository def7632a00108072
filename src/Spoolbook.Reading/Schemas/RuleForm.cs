namespace Spoolbook.Reading.Schemas;

/// <summary>How the value of a tolerance is written.</summary>
/// <param name="What">What it is: <c>a length of film</c>.</param>
/// <param name="Pattern">The regular expression that its text matches.</param>
/// <param name="MostNumber">The most a bare number can be; null where a bare number is not allowed.</param>
public sealed record RuleForm(string What, string Pattern, decimal? MostNumber);
