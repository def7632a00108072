using System.Collections.Immutable;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.Logs;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Pictures;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Forecasts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Shipments;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.CameraReports;

/// <summary>A camera report for each roll.</summary>
internal sealed class CameraReportPaper : IPaper
{
    // Entries of a log in the larger type, remarks below, that leave the strip and the signatures room on the page.
    const int MostInLargeType = 14;

    // What the drift prints as 0.0.
    const double DialIsTrue = 0.05;

    // The entries whose room the pictures of effects take.
    const int EffectsTake = 6;

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
        var isDense = roll.Strip.Moves.Count(m => LogLines.IsLine(m.Entry)) + (roll.Effects.IsEmpty ? 0 : EffectsTake) > MostInLargeType;
        var isWhole = roll.Tally.InCan == roll.Strip.Loaded;
        var columns = LogColumn.OfReport(
            source.Words,
            [.. record.Takes],
            roll.Strip.Moves.Any(m => m.Entry is Wind),
            isDense && LogRows.HasShortRemarks(roll, format)
        );
        var rows = LogRows.Of(roll, format, columns);
        return new CameraReportFacts(source.Head)
        {
            Roll = record.Name.Value,
            Day = format.Date(DateOnly.FromDateTime(record.Load.On.Value)),
            Stock = StockFacts.Of(roll, lot, source.Books.Stock, format),
            Rated = RollPhrases.Rated(record, lot),
            Gauge = production.Gauge.Name,
            Process = format.ShortProcess(roll.LabWork.Process),
            IsReversal = roll.LabWork.Process is { } process && ProcessKind.IsReversal(process),
            Push = RollPhrases.Push(roll.LabWork.Push, format),
            IsPushed = roll.LabWork.Push != 0,
            Exposed = isWhole
                ? RollPhrases.InCan(roll, source.Books, format)
                : format.Account(roll.Tally.InCan, source.Books.Metric.Of(roll).InCan),
            OfLoaded = isWhole ? "" : format.Words.Fill("of-loaded", ("loaded", format.LengthWithUnit(roll.Strip.Loaded))),
            ToDo = RollPhrases.Services(roll, format),
            ScanTakes = RollPhrases.ToScan(roll, format),
            DoNotProcess =
                record.IsPractice ? format.Words["practice-heading"]
                : record is { IsUnshot: true, GoesToLab: false } ? format.Words["raw-heading"]
                : "",
            Warnings = [.. RollPhrases.Warnings(roll, source.Books, format)],
            WarningsSay = [.. RollPhrases.Expected(roll, source.Books, source.Waived, format)],
            Body = BodyOf(record, production),
            LoadedBy = format.Person(record.Load.By?.Value),
            LoadedOn = When(record.Load.On.Value, roll.Walk.Loading.Day, format),
            UnloadedOn = record.Unload is { } unload ? When(unload.On.Value, roll.Walk.TakingOut!.Day, format) : format.Words["in-camera"],
            UnloadedBy = format.Person(record.Unload?.By?.Value),
            StillLoaded = record.Unload is null ? format.Words["still-loaded"] : "",
            Threading = Threading(record.Load, format),
            Caution = format.Words[
                record.IsPractice ? "caution-practice"
                : record is { Unload: not null, IsUnshot: true, GoesToLab: false } ? "caution-raw"
                : "caution-can"
            ],
            LabNotes = record.Lab?.Notes?.Value ?? "",
            Columns = columns,
            IsDense = isDense,
            Rows = rows,
            Tally = TallyFacts.Of(roll.Tally, source.Books.Metric.Of(roll), format),
            GoodScreenTime = PaperFormat.Clock(roll.Tally.Good.Seconds(production.ProjectedAt)),
            Passes = PaperFormat.Number(roll.Strip.Passes),
            Effects = EffectLines.Of(roll.Effects.Where(e => e.Kind == EffectKind.HandCranked), format),
            Waivers = source.WaiversOf(roll),
            Strip = new Markup(StripPicture.Draw(roll, format, account: source.Books.Metric.Of(roll))),
            PhoneStrip = new Markup(StripPicture.Draw(roll, format, PictureWidth.Narrow, source.Books.Metric.Of(roll))),
            PhoneInsets = [.. EffectPicture.DrawAll(roll, format, PictureWidth.Narrow).Select(svg => new Markup(svg))],
            Insets = [.. EffectPicture.DrawAll(roll, format).Select(svg => new Markup(svg))],
            CameBack = source.Returned.GetValueOrDefault(record.Name.Value) is { } back
                ? format.Words.Fill(LabBack(back.State), ("day", format.Date(back.On)))
                : "",
            FromTheLab = FromTheLab(source.Returned.GetValueOrDefault(record.Name.Value), format),
            LengthUnit = format.LengthUnitName,
            Dial = DialOf(roll, format),
        };
    }

    // The night after a day, or the evening before it, belongs to the day that was shot.
    static string When(DateTime on, DateOnly day, PaperFormat format) =>
        format.DateAndTime(on)
        + (day == DateOnly.FromDateTime(on) ? "" : " " + format.Words.Fill("of-shooting-day", ("day", format.DateShort(day))));

    static string LabBack(CanState state) =>
        state switch
        {
            CanState.Unprocessed => "lab-back-unprocessed",
            CanState.GoesOn => "lab-back-goeson",
            _ => "lab-back-processed",
        };

    static ImmutableArray<string> FromTheLab(CanReturn? back, PaperFormat format) =>
        back is null
            ? []
            :
            [
                .. back.Lights.IsEmpty
                    ? []
                    : (string[])
                        [format.Words.Fill("lab-lights", ("lights", string.Join(", ", back.Lights.Select(l => $"{l.Slate} {l.Lights}"))))],
                .. back.Faults.Select(f => f.At.Length == 0 ? f.Note : format.Words.Fill("lab-fault-at", ("at", f.At), ("what", f.Note))),
            ];

    // How far the footage dial can be trusted, for an editor who looks for a take by its dial reading.
    static string DialOf(RollBook roll, PaperFormat format) =>
        Dial.DriftOver(roll.Strip) is not { } drift
            ? ""
            : format.Words.Fill(
                Math.Abs(drift.Drift) < DialIsTrue ? "dial-true"
                    : drift.Drift < 0 ? "dial-short"
                    : "dial-long",
                ("feet", format.Decimals(Math.Abs(drift.Drift))),
                ("unit", format.InMetres ? "m" : "ft"),
                ("readings", format.Count(drift.Readings.Length, "reading"))
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
