using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// Lengths in the workbook are counted in frames, so that any sum of cells is a sum of film. What is read is made of the
/// frames by a formula: words such as <c>31+12</c>, as on the papers, or metres with two decimals.
/// </summary>
sealed class WorkbookUnits(Production production)
{
    const string Dash = "\"–\"";

    public Ratio FramesPerFoot => production.Gauge.FramesPerFoot;

    public bool InMetres => production.Units == LengthUnit.Metres;

    public Ratio FramesPerUnit => InMetres ? production.Gauge.FramesPerMetre : FramesPerFoot;

    public string UnitName => InMetres ? "m" : "ft";

    public double Length(Footage length) => (new Ratio(length.Frames, 1) / FramesPerUnit).ToDouble();

    /// <summary>Seconds at the projection speed as a fraction of a day, a spreadsheet's form of time.</summary>
    public double ScreenTime(Footage film) => (new Ratio(film.Frames, 1) / production.ProjectedAt.FramesPerSecond / 86400).ToDouble();

    /// <summary>The name of the column with the frames of a column of lengths.</summary>
    public static string FramesOf(string head) => head + " frames";

    /// <summary>A length as it is read, from the formula of its frames.</summary>
    /// <param name="centimetres">The same as its account prints it in metres; by default to the nearest centimetre.</param>
    /// <param name="signed">Whether it may be less than nothing.</param>
    /// <param name="dash">Whether no film is a dash, as in an account; else it is 0+00.</param>
    public CellValue Shown(string frames, Footage length, long? centimetres = null, bool signed = false, bool dash = true)
    {
        if (InMetres)
        {
            var nearest = (long)(length.Metres(production.Gauge) * 100).Round();
            var (printed, more) = (centimetres ?? nearest, (centimetres ?? nearest) - nearest);
            var formula = $"ROUND({frames}/FramesPerUnit,2)";
            return CellValue.Calculated(
                more == 0
                    ? formula
                    : string.Create(CultureInfo.InvariantCulture, $"{formula}{(more < 0 ? "-" : "+")}{Math.Abs(more) / 100m:0.00}"),
                printed / 100.0
            );
        }

        var words = dash && length == Footage.Zero ? "–" : length.FeetAndFrames(production.Gauge);
        var film = signed ? $"ABS({frames})" : frames;
        var sign = signed ? $"IF({frames}<0,\"-\",\"\")&" : "";

        // A foot of a gauge with three perforations to the frame holds a third of a frame, which no spreadsheet counts exactly.
        var read = FramesPerFoot.IsWhole
            ? $"INT({film}/FramesPerFoot)&\"+\"&TEXT(MOD({film},FramesPerFoot),\"00\")"
            : $"INT({film}/FramesPerFoot+0.000001)&\"+\"&"
                + $"TEXT(INT({film}-INT({film}/FramesPerFoot+0.000001)*FramesPerFoot+0.000001),\"00\")";
        return CellValue.CalculatedWords(dash ? $"IF({frames}=0,{Dash},{sign}{read})" : sign + read, words);
    }

    /// <summary>A column of lengths, with the frames that they are made of beside the printed columns.</summary>
    /// <param name="frames">The formula of the frames.</param>
    public Column<TRow> Film<TRow>(
        string head,
        double width,
        string frames,
        Func<TRow, Footage> film,
        Func<TRow, long>? centimetres = null,
        bool signed = false
    ) =>
        OfColumn(head, width, FramesOf(head), film, centimetres, signed) with
        {
            Frames = new(FramesOf(head), CellFormat.Frames, 10, r => CellValue.Calculated(frames, film(r).Frames)),
        };

    /// <summary>A column of lengths, made of another column's frames.</summary>
    public Column<TRow> OfColumn<TRow>(
        string head,
        double width,
        string framesHead,
        Func<TRow, Footage> film,
        Func<TRow, long>? centimetres = null,
        bool signed = false
    ) =>
        new(head, CellFormat.Length, width, r => Shown($"[@[{framesHead}]]", film(r), centimetres?.Invoke(r), signed))
        {
            Summed = true,
            FramesHead = framesHead,
            Film = film,
        };
}
