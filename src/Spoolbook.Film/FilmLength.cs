namespace Spoolbook.Film;

/// <summary>
/// A length of film, or a position on it, as written. It takes a gauge and sometimes a speed to turn it into frames.
/// <c>default</c> is no film at all.
/// </summary>
public readonly record struct FilmLength
{
    FilmLength(FilmLengthUnit unit, Ratio quantity, long over = 0)
    {
        if (quantity.Sign < 0 || over < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(quantity), "A length that is written down is not negative.");
        }

        Unit = unit;
        Quantity = quantity;
        Over = over;
    }

    /// <summary>The unit it was written in.</summary>
    public FilmLengthUnit Unit { get; }

    /// <summary>How many of the unit; the whole feet for feet and frames. Not negative.</summary>
    public Ratio Quantity { get; }

    /// <summary>The frames over whole feet; 0 in every other unit.</summary>
    public long Over { get; }

    /// <summary>Whether it takes a speed to turn it into frames.</summary>
    public bool IsTime => Unit == FilmLengthUnit.Seconds;

    /// <summary>Frames.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative, as for feet, metres and seconds.</exception>
    public static FilmLength OfFrames(long frames) => new(FilmLengthUnit.Frames, frames);

    /// <summary>Whole feet and the frames over them.</summary>
    public static FilmLength OfFeetAndFrames(long feet, long over) => new(FilmLengthUnit.FeetAndFrames, feet, over);

    /// <summary>Feet.</summary>
    public static FilmLength OfFeet(Ratio feet) => new(FilmLengthUnit.Feet, feet);

    /// <summary>Metres.</summary>
    public static FilmLength OfMetres(Ratio metres) => new(FilmLengthUnit.Metres, metres);

    /// <summary>Seconds at a speed that is not known yet.</summary>
    public static FilmLength OfSeconds(Ratio seconds) => new(FilmLengthUnit.Seconds, seconds);

    /// <summary>
    /// Reads <c>31+12</c>, <c>31.3ft</c>, <c>31ft 12fr</c>, <c>1252fr</c>, <c>9.5m</c> or <c>12s</c>. Whether the
    /// frames after the plus stay below a foot depends on the gauge: <see cref="Check"/>.
    /// </summary>
    public static Parsed<FilmLength, FilmLengthFault> Parse(string text) => FilmLengthForm.Read(text);

    /// <summary>Reads a length, and checks the frames over whole feet against the gauge.</summary>
    public static Parsed<FilmLength, FilmLengthFault> Parse(string text, Gauge gauge)
    {
        var parsed = Parse(text);
        return parsed.TryGet(out var length) && length.Check(gauge) is { } fault
            ? new(fault, new Slip(fault, text) { Gauge = gauge })
            : parsed;
    }

    /// <summary>
    /// What is wrong with the length in a gauge: <see cref="FilmLengthFault.FramesMakeAFoot"/> where the frames over
    /// whole feet are a foot or more (<c>31+45</c> in 16 mm). Null where the length is possible.
    /// </summary>
    public FilmLengthFault? Check(Gauge gauge) =>
        Unit == FilmLengthUnit.FeetAndFrames && In(gauge, Speed.Normal) >= FootMark(Quantity + 1, gauge)
            ? FilmLengthFault.FramesMakeAFoot
            : null;

    /// <summary>
    /// The length in whole frames: the nearest, and the higher of two equally near. Where a foot is not a whole number
    /// of frames, it begins at its first whole frame, so feet and frames are exact in every gauge.
    /// </summary>
    /// <param name="gauge">Its nominal frames make a foot; a metre is 3.280839… ft.</param>
    /// <param name="speed">The speed of the take; used only where <see cref="IsTime"/>.</param>
    /// <exception cref="OverflowException">More frames than 64 bits count.</exception>
    public Footage In(Gauge gauge, Speed speed) =>
        Unit switch
        {
            FilmLengthUnit.FeetAndFrames => FootMark(Quantity, gauge) + new Footage(Over),
            FilmLengthUnit.Feet => Nearest(Quantity * gauge.FramesPerFoot),
            FilmLengthUnit.Metres => Nearest(Quantity * gauge.FramesPerMetre),
            FilmLengthUnit.Seconds => Nearest(Quantity * speed.FramesPerSecond),
            _ => Nearest(Quantity),
        };

    /// <summary>As a person writes it, with only the decimals that it needs, at most six.</summary>
    public override string ToString() =>
        Unit switch
        {
            FilmLengthUnit.FeetAndFrames => $"{Quantity}+{Footage.TwoDigits(Over)}",
            FilmLengthUnit.Feet => Quantity.ToShortText(6) + "ft",
            FilmLengthUnit.Metres => Quantity.ToShortText(6) + "m",
            FilmLengthUnit.Seconds => Quantity.ToShortText(6) + "s",
            _ => Quantity + "fr",
        };

    static Footage FootMark(Ratio feet, Gauge gauge) => new((long)(feet * gauge.FramesPerFoot).Ceiling());

    static Footage Nearest(Ratio frames) => new((long)frames.Round());
}
