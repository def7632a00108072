namespace Spoolbook.Acceptance.Writing;

/// <summary>The process is no more. Nothing of ours may catch it.</summary>
sealed class ProcessKilledException : Exception;
