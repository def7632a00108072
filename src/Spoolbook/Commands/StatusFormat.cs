namespace Spoolbook.Commands;

/// <summary>How the status is printed.</summary>
internal enum StatusFormat
{
    Text,
    Json,
}
