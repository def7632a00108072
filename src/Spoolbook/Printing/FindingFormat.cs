namespace Spoolbook.Printing;

/// <summary>How findings are printed.</summary>
internal enum FindingFormat
{
    Text,
    Json,
    Sarif,
}
