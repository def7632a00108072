using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Workbook;

/// <summary>
/// Lengths in the workbook are numbers of feet or metres, so that any sum of cells is a sum of film. Feet are shown as
/// feet and frames by a format of fortieths (in 16 mm): 31.3 reads <c>31 12/40</c>.
/// </summary>
sealed class WorkbookUnits(Production production)
{
    public Ratio FramesPerFoot => production.Gauge.FramesPerFoot;

    public bool InMetres => production.Units == LengthUnit.Metres;

    public Ratio FramesPerUnit => InMetres ? production.Gauge.FramesPerMetre : FramesPerFoot;

    public string UnitName => InMetres ? "m" : "ft";

    public string LengthFormat =>
        InMetres || !FramesPerFoot.IsWhole
            ? "#,##0.00"
            : string.Create(CultureInfo.InvariantCulture, $"# ??/{FramesPerFoot};-# ??/{FramesPerFoot};\"–\"");

    public double Length(Footage length) => (new Ratio(length.Frames, 1) / FramesPerUnit).ToDouble();

    /// <summary>Seconds at the projection speed as a fraction of a day, a spreadsheet's form of time.</summary>
    public double ScreenTime(Footage film) => (new Ratio(film.Frames, 1) / production.ProjectedAt.FramesPerSecond / 86400).ToDouble();
}
