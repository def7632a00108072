using Spoolbook.Film;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Papers.Facts;

/// <summary>A tally, ready to print.</summary>
public sealed record TallyFacts(
    string Good,
    string Hold,
    string NoGood,
    string Waste,
    string ShortEnd,
    string Loaded,
    string Exposed,
    string WasteByCause
)
{
    /// <summary>A tally in the production's units.</summary>
    /// <param name="metric">The same in centimetres that add up.</param>
    internal static TallyFacts Of(Tally tally, MetricTally metric, PaperFormat format) =>
        format.InMetres ? Of(metric, format) : Of(tally, format);

    static TallyFacts Of(MetricTally tally, PaperFormat format) =>
        new(
            format.MetresOrDash(tally.Good),
            format.MetresOrDash(tally.Hold),
            format.MetresOrDash(tally.NoGood),
            format.MetresOrDash(tally.Waste),
            format.MetresOrDash(tally.ShortEnd),
            format.Metres(tally.Loaded),
            format.Metres(tally.Exposed),
            string.Join(", ", tally.Wasted.Select(w => format.Cause(w.Key) + " " + format.Metres(w.Value)))
        );

    static TallyFacts Of(Tally tally, PaperFormat format) =>
        new(
            format.LengthOrDash(tally.Good),
            format.LengthOrDash(tally.Hold),
            format.LengthOrDash(tally.NoGood),
            format.LengthOrDash(tally.Waste),
            format.LengthOrDash(tally.ShortEnd),
            format.Length(tally.Loaded),
            format.Length(tally.Exposed),
            string.Join(
                ", ",
                tally.Wasted.Where(w => w.Value != Footage.Zero).Select(w => format.Cause(w.Key) + " " + format.Length(w.Value))
            )
        );
}
