namespace Spoolbook.Commands;

/// <summary>How it is said what came of lines.</summary>
internal enum LogFormat
{
    /// <summary>For people.</summary>
    Text,

    /// <summary>For programs.</summary>
    Json,
}
