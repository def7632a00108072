namespace Spoolbook.Printing;

/// <summary>How to print findings.</summary>
internal enum FindingFormat
{
    Text,
    Json,
    Sarif,

    /// <summary>Workflow commands of a code host.</summary>
    Github,
}
