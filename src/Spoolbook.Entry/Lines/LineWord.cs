namespace Spoolbook.Entry.Lines;

/// <summary>A word of a line, without the comma or semicolon after it.</summary>
/// <param name="Text">Its text, without quotation marks.</param>
/// <param name="Start">Its first character in the line.</param>
/// <param name="End">The first character after it and its comma or colon.</param>
readonly record struct LineWord(string Text, int Start, int End)
{
    public bool IsQuoted { get; init; }

    /// <summary>Whether a colon follows, which makes everything after it the remark.</summary>
    public bool HasColon { get; init; }

    /// <summary>Whether its quotation marks never close, or something touches them.</summary>
    public bool IsBroken { get; init; }

    /// <summary>Whether it is a word of the grammar, in small or capital letters.</summary>
    public bool Is(string word) => !IsQuoted && Text.Equals(word, StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether it has a figure in it: words of a remark hardly do.</summary>
    public bool HasFigure => Text.AsSpan().ContainsAnyInRange('0', '9');
}
