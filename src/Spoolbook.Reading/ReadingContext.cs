using Spoolbook.Film;
using Spoolbook.Reading.Files;

namespace Spoolbook.Reading;

/// <summary>What a value's meaning depends on besides its text: the production's gauge, and the take's speed.</summary>
sealed class ReadingContext(FindingList findings, Func<string, PictureFile> pictures)
{
    public Func<string, PictureFile> Pictures { get; } = pictures;

    public FindingList Findings { get; } = findings;

    /// <summary>The gauge that feet are counted in.</summary>
    public Gauge Gauge { get; set; } = Gauge.Film16;

    /// <summary>The speed for a length written as a time.</summary>
    public Speed Speed { get; set; } = Speed.Normal;
}
