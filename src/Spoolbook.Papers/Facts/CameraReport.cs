using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Facts;

/// <summary>The facts of one roll's camera report.</summary>
public sealed record CameraReportFacts(PaperHead Head) : PaperFacts(Head)
{
    public required string Roll { get; init; }
    public required string Day { get; init; }
    public required StockFacts Stock { get; init; }
    public required string Rated { get; init; }
    public required string Process { get; init; }
    public required string Push { get; init; }
    public required string Body { get; init; }
    public required string LoadedBy { get; init; }
    public required string LoadedOn { get; init; }
    public required string UnloadedOn { get; init; }
    public required string UnloadedBy { get; init; }
    public required string Threading { get; init; }
    public required string LabNotes { get; init; }
    public required ImmutableArray<LogRow> Rows { get; init; }
    public required TallyFacts Tally { get; init; }
    public required string GoodScreenTime { get; init; }
    public required string Passes { get; init; }
    public required ImmutableArray<string> Effects { get; init; }
    public required ImmutableArray<WaiverFacts> Waivers { get; init; }
    public required Pages.Markup Strip { get; init; }
    public required ImmutableArray<Pages.Markup> Insets { get; init; }

    /// <summary>The strip once more, for a telephone.</summary>
    public required Pages.Markup PhoneStrip { get; init; }

    /// <summary>The insets once more, for a telephone.</summary>
    public required ImmutableArray<Pages.Markup> PhoneInsets { get; init; }
    public required string LengthUnit { get; init; }
    public required string Dial { get; init; }
}

/// <summary>The stock of a roll as its can says it.</summary>
public sealed record StockFacts(string Name, string Lot, string Unit, string Emulsion, string Index, string Balance, string Loaded, string Expires)
{
    /// <summary>Lot, unit and emulsion, as far as they are known.</summary>
    public string Source => string.Join(" · ", new[] { $"{Lot} / {Unit}", Emulsion }.Where(p => p != Wording.Dash));
}

/// <summary>One line of the log: a take, or something else that happened.</summary>
/// <param name="IsTake">Whether it is a take; otherwise only the remarks and the positions are filled.</param>
public sealed record LogRow(bool IsTake)
{
    public string Number { get; init; } = "";
    public string Scene { get; init; } = "";
    public string Shot { get; init; } = "";
    public string Take { get; init; } = "";
    public string From { get; init; } = "";
    public string To { get; init; } = "";
    public string Length { get; init; } = "";
    public string Seconds { get; init; } = "";
    public string Speed { get; init; } = "";
    public string Lens { get; init; } = "";
    public string Stop { get; init; } = "";
    public string Filter { get; init; } = "";
    public string Focus { get; init; } = "";
    public string Mark { get; init; } = "";
    public string Pass { get; init; } = "";
    public string Remarks { get; init; } = "";
}

/// <summary>An account written out.</summary>
public sealed record TallyFacts(string Good, string Hold, string NoGood, string Waste, string ShortEnd, string Loaded, string Exposed, string WasteByCause)
{
    internal static TallyFacts Of(Tally tally, Wording say) => new(
        say.LengthOrDash(tally.Good),
        say.LengthOrDash(tally.Hold),
        say.LengthOrDash(tally.NoGood),
        say.LengthOrDash(tally.Waste),
        say.LengthOrDash(tally.ShortEnd),
        say.Length(tally.Loaded),
        say.Length(tally.Exposed),
        string.Join(", ", tally.Wasted.Where(w => w.Value != Footage.Zero).Select(w => say.Cause(w.Key) + " " + say.Length(w.Value))));
}

/// <summary>A rule broken on purpose.</summary>
public sealed record WaiverFacts(string Check, string What, string Reason, string By);

/// <summary>Gathers the facts of camera reports.</summary>
internal static class CameraReport
{
    public static CameraReportFacts Of(RollBook roll, ShootBook book, ImmutableArray<WaiverFacts> waivers, PaperHead head, Wording say)
    {
        var record = roll.Roll;
        var production = book.Production;
        var lot = production.LotOf(record);
        return new CameraReportFacts(head)
        {
            Roll = record.Name.Value,
            Day = say.Date(DateOnly.FromDateTime(record.Load.On.Value)),
            Stock = StockOf(roll, lot, say),
            Rated = RatedOf(record, lot),
            Process = roll.LabWork.Process ?? say.Words["not-stated"],
            Push = PushOf(roll.LabWork.Push, say),
            Body = BodyOf(record, production),
            LoadedBy = say.Person(record.Load.By?.Value),
            LoadedOn = say.DateAndTime(record.Load.On.Value),
            UnloadedOn = record.Unload is { } unload ? say.DateAndTime(unload.On.Value) : say.Words["in-camera"],
            UnloadedBy = say.Person(record.Unload?.By?.Value),
            Threading = Threading(record.Load, say),
            LabNotes = record.Lab?.Notes?.Value ?? "",
            Rows = LogRows.Of(roll, say),
            Tally = TallyFacts.Of(roll.Tally, say),
            GoodScreenTime = Wording.Clock(roll.Tally.Good.Seconds(production.ProjectedAt)),
            Passes = Wording.Number(roll.Strip.Passes),
            Effects = EffectLines.Of(roll, say),
            Waivers = waivers,
            Strip = new Pages.Markup(Pictures.StripPicture.Draw(roll, say)),
            PhoneStrip = new Pages.Markup(Pictures.StripPicture.Draw(roll, say, Pictures.PictureWidth.Narrow)),
            PhoneInsets = [.. Pictures.EffectPicture.DrawAll(roll, say, Pictures.PictureWidth.Narrow).Select(svg => new Pages.Markup(svg))],
            Insets = [.. Pictures.EffectPicture.DrawAll(roll, say).Select(svg => new Pages.Markup(svg))],
            LengthUnit = say.LengthUnitName,
            Dial = DialOf(roll, say),
        };
    }

    /// <summary><c>+1</c>, <c>none</c>: how far the lab must push.</summary>
    public static string PushOf(double push, Wording say) => push == 0 ? say.Words["push-none"] : say.Stops(push);

    public static StockFacts StockOf(RollBook roll, StockLot? lot, Wording say) => new(
        lot?.Stock.Value ?? "–",
        lot?.Name.Value ?? "–",
        roll.Roll.ShortEndOf is { } parent ? say.Words.Fill("short-end-of", ("roll", parent.Value)) : Wording.OrDash(roll.Roll.Unit),
        Wording.OrDash(lot?.Emulsion),
        lot is null ? "–" : Wording.Number(lot.Index.Value),
        lot is null ? "–" : say.Balance(lot.Balance),
        say.LengthWithUnit(roll.Strip.Loaded),
        lot?.Expires is { } expires ? say.Date(expires.Value) : "–");

    /// <summary>The exposure index that a roll was rated at: its own, else its stock's.</summary>
    public static string RatedOf(Roll roll, StockLot? lot) => Wording.OrDash(roll.Rated?.Value ?? lot?.Index.Value);

    // How far the footage dial can be believed: an editor who looks for a take by its dial reading wants to know.
    static string DialOf(RollBook roll, Wording say) => Dial.DriftOver(roll.Strip) is not { } drift ? ""
        : say.Words.Fill(
            drift.Drift < 0 ? "dial-short" : "dial-long",
            ("feet", say.Decimals(Math.Abs(drift.Drift))),
            ("readings", Wording.Number(drift.Readings.Length)));

    static string BodyOf(Roll roll, Production production) => production.BodyNamed(roll.Body?.Value) is { } body ? BodyOf(body) : Wording.OrDash(roll.Body);

    /// <summary>A body with its number.</summary>
    public static string BodyOf(Body body) => body.Name.Value + (body.Serial is { } serial ? " · " + serial.Value : "");

    static string Threading(Load load, Wording say)
    {
        var parts = new List<string> { say.Light(load.Light?.Value) };
        if (load.LoopsSet is { } loops)
        {
            parts.Add(say.Words[loops.Value ? "loops-set" : "loops-not-set"]);
        }

        if (load.PlateClosed is { } plate)
        {
            parts.Add(say.Words[plate.Value ? "plate-closed" : "plate-open"]);
        }

        return string.Join(", ", parts);
    }
}
