namespace Spoolbook.Fuzz.Targets;

/// <summary>The product did not throw, and what it gave is wrong all the same.</summary>
public sealed class BrokenPromiseException : Exception
{
    public BrokenPromiseException(string message)
        : base(message) { }

    public BrokenPromiseException() { }

    public BrokenPromiseException(string message, Exception inner)
        : base(message, inner) { }
}
