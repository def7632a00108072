namespace Spoolbook.Film;

/// <summary>
/// The result of reading what a person wrote: the value, or what is wrong. A slip of the pen is a value, never an
/// exception; what to say about it is for whoever reads, in the reader's language.
/// </summary>
/// <typeparam name="TValue">What is read.</typeparam>
/// <typeparam name="TFault">What can be wrong, one name each.</typeparam>
public readonly record struct Parsed<TValue, TFault>
    where TValue : struct
    where TFault : struct, Enum
{
    readonly TValue? _value;
    readonly TFault _fault;
    readonly Slip? _slip;

    internal Parsed(TValue value) => _value = value;

    internal Parsed(TFault fault, string text)
        : this(fault, new Slip(fault, text)) { }

    internal Parsed(TFault fault, Slip slip)
    {
        _fault = fault;
        _slip = slip;
    }

    /// <summary>Whether there is a value.</summary>
    public bool Succeeded => _value is not null;

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">There is no value.</exception>
    public TValue Value =>
        _value ?? throw new InvalidOperationException($"There is no value: {Slip?.Fault.ToString() ?? "nothing was read"}");

    /// <summary>What is wrong; null when there is a value.</summary>
    public TFault? Fault => _value is null ? _fault : null;

    /// <summary>What is wrong with what was written; null where there is a value, or where nothing was read.</summary>
    public Slip? Slip => _value is null ? _slip : null;

    /// <summary>Whether there is a value, with the value.</summary>
    public bool TryGet(out TValue value)
    {
        value = _value.GetValueOrDefault();
        return Succeeded;
    }

    /// <summary>A value that was read.</summary>
    public static implicit operator Parsed<TValue, TFault>(TValue value) => new(value);
}
