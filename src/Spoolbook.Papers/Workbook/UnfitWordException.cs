using Spoolbook.Shoot.Findings;

namespace Spoolbook.Papers.Workbook;

/// <summary>A word that the workbook cannot use in its place.</summary>
public sealed class UnfitWordException : Exception
{
    /// <summary>For a key, with the reason.</summary>
    public UnfitWordException(string key, Sentence reason)
        : base($"'{key}' cannot be used: {reason}.") => (Key, Description) = (key, reason);

    /// <summary>Without a key.</summary>
    public UnfitWordException()
        : this("", Sentence.Plain("")) { }

    /// <summary>With a message.</summary>
    public UnfitWordException(string message)
        : this("", Sentence.Plain(message)) { }

    /// <summary>With a message and its cause.</summary>
    public UnfitWordException(string message, Exception inner)
        : base(message, inner) => (Key, Description) = ("", Sentence.Plain(message));

    /// <summary>The key.</summary>
    public string Key { get; }

    /// <summary>Why it does not fit.</summary>
    public Sentence Description { get; }

    /// <summary>Why it does not fit, in English.</summary>
    public string Reason => Description.ToString();
}
