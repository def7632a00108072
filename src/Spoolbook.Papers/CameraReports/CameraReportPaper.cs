using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.Logs;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Pictures;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.CameraReports;

/// <summary>A camera report for each roll.</summary>
internal sealed class CameraReportPaper : IPaper
{
    public IEnumerable<PaperJob> Jobs(PaperSource source) =>
        from roll in source.Shoot.Rolls
        let name = roll.Roll.Name.Value
        select new PaperJob(NameOf(roll.Roll), "camera-report.html", source.Words["camera-report"] + " " + name, _ => Of(roll, source))
        {
            LinkedFrom = LinkPlace.Reports,
            LinkText = name,
        };

    /// <summary>The name of a roll's report in its folder.</summary>
    public static string NameOf(Roll roll) => "camera-report-" + FileNames.Safe(roll.Name.Value);

    static CameraReportFacts Of(RollBook roll, PaperSource source)
    {
        var record = roll.Roll;
        var (production, format) = (source.Production, source.Format);
        var lot = production.LotOf(record);
        var hasSound = record.Takes.Any(t => t.SaysSound);
        var columns = LogColumn.All(source.Words, hasSound);
        return new CameraReportFacts(source.Head)
        {
            Roll = record.Name.Value,
            Day = format.Date(DateOnly.FromDateTime(record.Load.On.Value)),
            Stock = StockFacts.Of(roll, lot, format),
            Rated = RollPhrases.Rated(record, lot),
            Process = roll.LabWork.Process ?? format.Words["not-stated"],
            Push = RollPhrases.Push(roll.LabWork.Push, format),
            Body = BodyOf(record, production),
            LoadedBy = format.Person(record.Load.By?.Value),
            LoadedOn = When(record.Load.On.Value, roll.Walk.Loading.Day, format),
            UnloadedOn = record.Unload is { } unload ? When(unload.On.Value, roll.Walk.TakingOut!.Day, format) : format.Words["in-camera"],
            UnloadedBy = format.Person(record.Unload?.By?.Value),
            Threading = Threading(record.Load, format),
            Caution = format.Words[
                record.IsPractice ? "caution-practice"
                : record is { Unload: not null, IsUnshot: true, GoesToLab: false } ? "caution-raw"
                : "caution-can"
            ],
            LabNotes = record.Lab?.Notes?.Value ?? "",
            Columns = columns,
            HasSound = hasSound,
            Rows = LogRows.Of(roll, format, columns),
            Tally = TallyFacts.Of(roll.Tally, source.Books.Metric.Of(roll), format),
            GoodScreenTime = PaperFormat.Clock(roll.Tally.Good.Seconds(production.ProjectedAt)),
            Passes = PaperFormat.Number(roll.Strip.Passes),
            Effects = EffectLines.Of(roll, format),
            Waivers = source.WaiversOf(roll),
            Strip = new Markup(StripPicture.Draw(roll, format)),
            PhoneStrip = new Markup(StripPicture.Draw(roll, format, PictureWidth.Narrow)),
            PhoneInsets = [.. EffectPicture.DrawAll(roll, format, PictureWidth.Narrow).Select(svg => new Markup(svg))],
            Insets = [.. EffectPicture.DrawAll(roll, format).Select(svg => new Markup(svg))],
            LengthUnit = format.LengthUnitName,
            Dial = DialOf(roll, format),
        };
    }

    // The night after a day, or the evening before it, belongs to the day that was shot.
    static string When(DateTime on, DateOnly day, PaperFormat format) =>
        format.DateAndTime(on)
        + (day == DateOnly.FromDateTime(on) ? "" : " " + format.Words.Fill("of-shooting-day", ("day", format.DateShort(day))));

    // How far the footage dial can be trusted, for an editor who looks for a take by its dial reading.
    static string DialOf(RollBook roll, PaperFormat format) =>
        Dial.DriftOver(roll.Strip) is not { } drift
            ? ""
            : format.Words.Fill(
                drift.Drift < 0 ? "dial-short" : "dial-long",
                ("feet", format.Decimals(Math.Abs(drift.Drift))),
                ("unit", format.InMetres ? "m" : "ft"),
                ("readings", PaperFormat.Number(drift.Readings.Length))
            );

    static string BodyOf(Roll roll, Production production) =>
        production.BodyNamed(roll.Body?.Value) is { } body ? RollPhrases.Body(body) : PaperFormat.OrDash(roll.Body);

    static string Threading(Load load, PaperFormat format)
    {
        var parts = new List<string> { format.Light(load.Light?.Value) };
        if (load.LoopsSet is { } loops)
        {
            parts.Add(format.Words[loops.Value ? "loops-set" : "loops-not-set"]);
        }

        if (load.PlateClosed is { } plate)
        {
            parts.Add(format.Words[plate.Value ? "plate-closed" : "plate-open"]);
        }

        if (ReadyWords.Of(load, format.Words) is { } ready)
        {
            parts.Add(ready);
        }

        return string.Join(", ", parts);
    }
}
