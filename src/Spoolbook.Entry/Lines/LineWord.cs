namespace Spoolbook.Entry.Lines;

/// <summary>A word of a line, without the comma or semicolon after it.</summary>
/// <param name="Text">What it says, without its quotation marks.</param>
/// <param name="Start">Its first character in the line.</param>
/// <param name="End">The first character after it, after its comma or colon too.</param>
readonly record struct LineWord(string Text, int Start, int End)
{
    /// <summary>Whether it was in quotation marks.</summary>
    public bool IsQuoted { get; init; }

    /// <summary>Whether a colon follows it, after which everything is the remark.</summary>
    public bool HasColon { get; init; }

    /// <summary>Whether its quotation marks never close, or something sticks to them.</summary>
    public bool IsBroken { get; init; }

    /// <summary>Whether it is a word of the grammar, in small or capital letters.</summary>
    public bool Is(string word) => !IsQuoted && Text.Equals(word, StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether there is a figure in it, so that it was hardly meant as a word of the remark.</summary>
    public bool HasFigure => Text.AsSpan().ContainsAnyInRange('0', '9');
}
