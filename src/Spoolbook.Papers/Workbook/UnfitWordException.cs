namespace Spoolbook.Papers.Workbook;

/// <summary>A word that the workbook cannot use in its place.</summary>
public sealed class UnfitWordException : Exception
{
    /// <summary>For a key, with the reason.</summary>
    public UnfitWordException(string key, string reason)
        : base($"'{key}' cannot be used: {reason}.") => (Key, Reason) = (key, reason);

    /// <summary>Without a key.</summary>
    public UnfitWordException()
        : this("", "") { }

    /// <summary>With a message.</summary>
    public UnfitWordException(string message)
        : this("", message) { }

    /// <summary>With a message and its cause.</summary>
    public UnfitWordException(string message, Exception inner)
        : base(message, inner) => (Key, Reason) = ("", message);

    /// <summary>The key.</summary>
    public string Key { get; }

    /// <summary>Why it does not fit.</summary>
    public string Reason { get; }
}
