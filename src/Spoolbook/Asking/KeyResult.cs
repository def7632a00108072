namespace Spoolbook.Asking;

/// <summary>What a key did to the line.</summary>
internal enum KeyResult
{
    /// <summary>It is still being typed.</summary>
    Typing,

    /// <summary>It is done.</summary>
    Done,

    /// <summary>There are no more lines.</summary>
    End,
}
