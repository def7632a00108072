namespace Spoolbook.Writing;

/// <summary>Another process is writing in the folder.</summary>
internal sealed class FolderBusyException(string message) : IOException(message);
