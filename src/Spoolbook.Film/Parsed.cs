namespace Spoolbook.Film;

/// <summary>
/// The result of reading what a person wrote: the value, or what is wrong and a sentence that shows what to write
/// instead. A slip of the pen is a value, never an exception.
/// </summary>
/// <typeparam name="TValue">What is read.</typeparam>
/// <typeparam name="TFault">What can be wrong, one name each.</typeparam>
public readonly record struct Parsed<TValue, TFault>
    where TValue : struct
    where TFault : struct, Enum
{
    readonly TValue? _value;
    readonly TFault _fault;
    readonly string? _advice;

    internal Parsed(TValue value) => _value = value;

    internal Parsed(TFault fault, string advice)
    {
        _fault = fault;
        _advice = advice;
    }

    /// <summary>Whether there is a value.</summary>
    public bool Succeeded => _value is not null;

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">There is no value.</exception>
    public TValue Value => _value ?? throw new InvalidOperationException($"There is no value: {Advice}");

    /// <summary>What is wrong; null when there is a value.</summary>
    public TFault? Fault => _value is null ? _fault : null;

    /// <summary>What is wrong and what to write instead, in one sentence; empty when there is a value.</summary>
    public string Advice => _value is null ? _advice ?? "nothing was read" : "";

    /// <summary>Whether there is a value, with the value.</summary>
    public bool TryGet(out TValue value)
    {
        value = _value.GetValueOrDefault();
        return Succeeded;
    }

    /// <summary>A value that was read.</summary>
    public static implicit operator Parsed<TValue, TFault>(TValue value) => new(value);
}
