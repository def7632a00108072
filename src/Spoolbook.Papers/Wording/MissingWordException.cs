namespace Spoolbook.Papers.Wording;

/// <summary>A word that the language's file lacks: an error in the templates, reported to the user.</summary>
public sealed class MissingWordException : Exception
{
    /// <summary>For a key.</summary>
    public MissingWordException(string key)
        : base($"The words file has no '{key}'.") => Key = key;

    /// <summary>Without a key.</summary>
    public MissingWordException()
        : this("") { }

    /// <summary>For a key, with its cause.</summary>
    public MissingWordException(string key, Exception inner)
        : base($"The words file has no '{key}'.", inner) => Key = key;

    /// <summary>The key.</summary>
    public string Key { get; }
}
