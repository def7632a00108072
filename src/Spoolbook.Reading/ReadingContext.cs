using Spoolbook.Film;
using Spoolbook.Reading.Files;

namespace Spoolbook.Reading;

/// <summary>What a value's meaning depends on beside its own text: the gauge of the production, and the speed of the take.</summary>
sealed class ReadingContext(FindingList findings, Func<string, PictureFile> pictures)
{
    /// <summary>Opens a picture that a sheet names.</summary>
    public Func<string, PictureFile> Pictures { get; } = pictures;

    public FindingList Findings { get; } = findings;

    /// <summary>The gauge that feet are counted in.</summary>
    public Gauge Gauge { get; set; } = Gauge.Film16;

    /// <summary>The speed that a length written as a time runs at.</summary>
    public Speed Speed { get; set; } = Speed.Normal;
}
