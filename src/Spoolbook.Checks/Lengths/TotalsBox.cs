using System.Collections.Immutable;
using Spoolbook.Checks.Running;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Checks.Lengths;

/// <summary>A box at the foot of a paper sheet, beside what the roll's book has.</summary>
/// <param name="Name">Its name in the words file.</param>
/// <param name="Account">The account it is of; null for all film loaded.</param>
/// <param name="Sheet">What the assistant wrote.</param>
/// <param name="Logged">What the log comes to.</param>
/// <param name="More">Frames that the sheet has more than the log; below 0 where it has less.</param>
/// <param name="Slack">Frames that rounding explains.</param>
sealed record TotalsBox(string Name, Account? Account, Located<SheetLength> Sheet, Footage Logged, Ratio More, Ratio Slack)
{
    public Sentence Said => Sentence.Of(Name);

    public bool Differs => !Explains(Ratio.Zero);

    /// <summary>A length as the box says it: in metres where the box is.</summary>
    public string Write(Context context, Footage length) =>
        Sheet.Value.In(context.Production).Unit == FilmLengthUnit.Metres ? context.Metres(length) : context.Write(length);

    /// <summary>Whether the box would be right if it said another length.</summary>
    public bool WouldBeRightAs(FilmLength other, Context context)
    {
        var apart = new SheetLength(null, other).FramesIn(context.Production) - Logged.Frames;
        return (apart.Sign < 0 ? Ratio.Zero - apart : apart) <= Slack;
    }

    /// <summary>Whether so many frames more in the log's account would bring it to what the sheet has.</summary>
    public bool Explains(Ratio frames)
    {
        var apart = More - frames;
        return (apart.Sign < 0 ? Ratio.Zero - apart : apart) <= Slack;
    }

    /// <summary>The boxes that were filled in, in their order on the sheet.</summary>
    public static ImmutableArray<TotalsBox> Of(Context context, RollBook book, SheetTotals totals)
    {
        var tally = book.Tally;
        return
        [
            .. Box("length/totals-differ.value.good", Shoot.Strips.Account.Good, totals.Good, tally.Good),
            .. Box("length/totals-differ.value.hold", Shoot.Strips.Account.Hold, totals.Hold, tally.Hold),
            .. Box("length/totals-differ.value.no-good", Shoot.Strips.Account.NoGood, totals.NoGood, tally.NoGood),
            .. Box("length/totals-differ.value.waste", Shoot.Strips.Account.Waste, totals.Waste, tally.Waste),
            .. Box("length/totals-differ.value.short-end", Shoot.Strips.Account.ShortEnd, totals.ShortEnd, tally.ShortEnd),
            .. Box("length/totals-differ.value.loaded", null, totals.Loaded, tally.Loaded),
        ];

        IEnumerable<TotalsBox> Box(string name, Account? account, Located<SheetLength>? sheet, Footage log)
        {
            if (sheet is not null)
            {
                yield return new TotalsBox(
                    name,
                    account,
                    sheet,
                    log,
                    sheet.Value.FramesIn(context.Production) - log.Frames,
                    sheet.Value.LastPlaceIn(context.Production) * context.Of(Tolerances.TotalsSlack)
                );
            }
        }
    }
}
