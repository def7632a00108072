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
    internal static TallyFacts Of(Tally tally, PaperFormat format) =>
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
