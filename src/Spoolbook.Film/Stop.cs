namespace Spoolbook.Film;

/// <summary>
/// A lens stop, as an aperture value: Av = 2 log2 N: 1 is 0, 1.4 is 1 and 5.6 is 5 (GNU units, after ASA PH2.12-1961).
/// <c>default</c> is an opening of 1.
/// </summary>
/// <param name="Av">Stops down from an opening of 1; negative for faster lenses.</param>
/// <param name="Mark">What is written before the number.</param>
public readonly record struct Stop(double Av, StopMark Mark = StopMark.None)
{
    /// <summary>
    /// The stop of a number. The full series (1, 1.4, 2, 2.8, 4, 5.6, 8, 11, 16, 22, …) is read as the exact powers of
    /// √2, any other number as written.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not above zero.</exception>
    public static Stop OfNumber(double number, StopMark mark = StopMark.None)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(number);
        return new Stop(StopSeries.AvOf(number), mark);
    }

    /// <summary>The exact number: √2 to the power of <see cref="Av"/>, 5.6 is 5.657.</summary>
    public double Number => Math.Pow(2, Av / 2);

    /// <summary>
    /// The number as engraved: 5.6 at a full stop; between full stops, the exact number. Depth of field tables use it
    /// (Kodak's slides on cameras and lenses).
    /// </summary>
    public double EngravedNumber => StopSeries.Engraved(Av) ?? Number;

    /// <summary>Reads <c>5.6</c>, <c>T2</c>, <c>f/4</c>, <c>4/5.6</c> (a split), <c>5.6 1/3</c> or <c>5.6+1/3</c>.</summary>
    public static Parsed<Stop, StopFault> Parse(string text) => StopForm.Read(text);

    /// <summary>This stop opened up by so many stops (closed down where negative).</summary>
    public Stop OpenedBy(double stops) => this with { Av = Av - stops };

    /// <summary>The stop to the nearest third, half or tenth, as the trade writes it.</summary>
    public string ToText(StopStep step) => StopForm.Write(this, step);

    /// <summary>The stop in the coarsest step that is exact; else the number with up to four digits.</summary>
    public override string ToString() => StopForm.WriteExact(this);
}
