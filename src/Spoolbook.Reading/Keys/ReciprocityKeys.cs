using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of one line in a stock's reciprocity table.</summary>
static class ReciprocityKeys
{
    public static readonly ValueKey<Film.ExposureTime> Time = new("time", TimeForms.Exposure, "The exposure time.")
    {
        Required = true,
        Example = "10s",
    };
    public static readonly ValueKey<double> Stops = new("stops", FilmForms.StopsMore, "The stops to open by at that time.")
    {
        Required = true,
        Example = "2/3",
    };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.reciprocity-line"), [Time, Stops]);
}
