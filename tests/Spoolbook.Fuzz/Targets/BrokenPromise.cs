namespace Spoolbook.Fuzz.Targets;

/// <summary>The product did not throw, and what it gave is wrong all the same.</summary>
public sealed class BrokenPromise : Exception
{
    public BrokenPromise(string message)
        : base(message) { }

    public BrokenPromise()
    {
    }

    public BrokenPromise(string message, Exception inner)
        : base(message, inner) { }
}
