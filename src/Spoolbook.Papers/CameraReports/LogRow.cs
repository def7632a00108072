namespace Spoolbook.Papers.CameraReports;

/// <summary>One line of the log: a take or another entry.</summary>
/// <param name="IsTake">Whether it is a take; other lines have only remarks and positions.</param>
public sealed record LogRow(bool IsTake)
{
    public string Number { get; init; } = "";
    public string Scene { get; init; } = "";
    public string Shot { get; init; } = "";
    public string Take { get; init; } = "";
    public string From { get; init; } = "";
    public string To { get; init; } = "";
    public string Length { get; init; } = "";
    public string Seconds { get; init; } = "";
    public string Speed { get; init; } = "";
    public string Lens { get; init; } = "";
    public string Stop { get; init; } = "";
    public string Filter { get; init; } = "";
    public string Focus { get; init; } = "";
    public string Mark { get; init; } = "";
    public string Pass { get; init; } = "";
    public string Remarks { get; init; } = "";
}
