namespace Spoolbook.Commands;

/// <summary>How an import prints its result.</summary>
internal enum ImportFormat
{
    Text,
    Json,
}
