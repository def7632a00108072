namespace Spoolbook.Commands;

/// <summary>When to print in colour.</summary>
internal enum ColourChoice
{
    /// <summary>On a terminal, unless <c>NO_COLOR</c> is set.</summary>
    Auto,

    Always,

    Never,
}
