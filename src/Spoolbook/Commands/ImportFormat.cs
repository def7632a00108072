namespace Spoolbook.Commands;

/// <summary>How an import tells what came of it.</summary>
internal enum ImportFormat
{
    Text,
    Json,
}
