using Spoolbook.Entry.Lines;

namespace Spoolbook.Asking;

/// <summary>Where lines come from: a keyboard, a pipe.</summary>
internal interface ILineSource
{
    /// <summary>The next line; null where there is no more.</summary>
    /// <param name="prompt">What stands before it on a terminal.</param>
    /// <param name="context">What the production says, for names that are completed; null where nothing can be read.</param>
    string? Read(string prompt, Func<LineContext?> context);
}
