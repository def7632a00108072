namespace Spoolbook.Printing;

/// <summary>How to print findings.</summary>
internal enum FindingFormat
{
    Text,
    Json,
    Sarif,
}
