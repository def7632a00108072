using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Cans;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Ledger;

/// <summary>The rolls and their takes.</summary>
sealed class LedgerRolls(LedgerJson ledger, LedgerSource source)
{
    public void Write()
    {
        ledger.Objects("rolls", source.Shoot.Counted, Roll);
        ledger.Objects("practice-rolls", source.Shoot.Rolls.Where(r => r.Roll.IsPractice), r =>
        {
            ledger.Word("roll", r.Roll.Name.Value);
            ledger.Length("loaded", r.Strip.Loaded);
        });
    }

    void Roll(RollBook roll)
    {
        var record = roll.Roll;
        var lot = source.Shoot.Production.LotOf(record);
        var work = roll.LabWork;
        ledger.Word("roll", record.Name.Value);
        ledger.Word("can", CanCode.Of(source.Shoot.Production, record).ToString());
        ledger.Word("stock", lot?.Stock.Value);
        ledger.Word("lot", lot?.Name.Value);
        ledger.Word("emulsion", lot?.Emulsion?.Value);
        ledger.Count("unit", record.ShortEndOf is null ? record.Unit?.Value : null);
        ledger.Word("short-end-of", record.ShortEndOf?.Value);
        ledger.Count("rated", record.Rated?.Value ?? lot?.Index.Value);
        ledger.Word("process", work.Process);
        ledger.Json.WriteNumber("push", work.Push);
        ledger.Words("services", work.Services);
        ledger.Json.WriteBoolean("sent", source.Shoot.Sent.Contains(roll));
        ledger.Word("body", record.Body?.Value);
        ledger.Moment("loaded-on", record.Load.On.Value);
        ledger.Date("loaded-day", roll.Walk.Loading.Day);
        ledger.Moment("taken-out", record.Unload?.On.Value);
        ledger.Date("taken-out-day", roll.Walk.TakingOut?.Day);
        ledger.Flag("ready", record.Load.Ready?.Value);
        ledger.Words("not-ready", record.Load.NotReady.Select(p => Codes.Of(p.Value)));
        ledger.Count("x-rayed", source.Stock.XRaysOf(record));
        Scan(roll);
        ledger.Count("passes", roll.Strip.Passes);
        ledger.Use("use", UseOfFilm.Of(roll.Tally, roll.Layers, source.Shoot.Production.ProjectedAt));
        ledger.Objects("takes", roll.Layers, Take);
        ledger.Objects("film", roll.Strip.Segments, Stretch);
    }

    void Scan(RollBook roll)
    {
        var delivery = source.Books.Delivery;
        var files = delivery.Of(roll) is { } scanned ? delivery.Files(scanned) : null;
        ledger.Count("scan-frames", files?.Frames);
        ledger.Number("scan-seconds", files?.Seconds);
        ledger.Number("scan-gigabytes", files?.Gigabytes);
    }

    void Take(Layer layer)
    {
        var take = layer.Take;
        ledger.Word("slate", take.Slate);
        ledger.Word("scene", take.Scene.Value);
        ledger.Word("shot", take.Shot?.Value);
        ledger.Count("take", take.Number.Value);
        ledger.Word("mark", Codes.Of(take.Mark.Value));
        ledger.Count("pass", layer.Pass);
        ledger.Date("day", layer.On);
        ledger.Word("at", take.At is { } at ? PaperFormat.Time(at.Value) : null);
        ledger.Length("from", layer.Span.From);
        ledger.Length("to", layer.Span.To);
        ledger.Length("length", layer.Span.Length);
        ledger.Number("screen-seconds", layer.Span.Length.Frames / source.Shoot.Production.ProjectedAt.FramesPerSecond);
        ledger.Word("speed", take.Speed.FramesPerSecond.ToString());
        ledger.Word("lens", take.Lens?.Value);
        ledger.Word("stop", take.Stop?.Value.ToString());
        ledger.Words("filters", take.Filters.Select(f => f.Value));
        ledger.Word("shutter", take.Shutter?.Value);
        ledger.Length("fade-in", take.FadeIn?.Value);
        ledger.Length("fade-out", take.FadeOut?.Value);
        ledger.Word("reading", take.Reading?.Value.ToString());
        ledger.Word("meter", take.Meter?.Value);
        ledger.Word("metered-at", take.MeteredAt?.Value.ToString());
        ledger.Millimetres("focus-millimetres", take.Focus?.Value);
        ledger.Objects("measured", take.Measured, m => ledger.Millimetres("millimetres", m.Value));
        ledger.Word("motor", take.Motor?.Value);
        ledger.Flag("sync", take.Sync?.Value);
        ledger.Flag("mute", take.Mute?.Value);
        ledger.Word("sound-roll", layer.SoundRoll);
        ledger.Word("slate-at", take.SlateAt is { } slate ? Codes.Of(slate.Value) : null);
        ledger.Flag("second-sticks", take.SecondSticks?.Value);
        ledger.Flag("slot-filled", take.SlotFilled?.Value);
        ledger.Word("body", layer.Body);
        ledger.Word("note", take.Note?.Value);
    }

    void Stretch(Segment segment)
    {
        ledger.Length("from", segment.Span.From);
        ledger.Length("to", segment.Span.To);
        ledger.Word("account", Codes.Of(segment.Account));
        ledger.Word("waste-by", segment.Cause is { } cause ? Codes.Of(cause) : null);
        ledger.Date("day", segment.Custody.On);
        ledger.Word("body", segment.Custody.Body);
        ledger.Words("takes", segment.Layers.Select(l => l.Take.Slate));
    }
}
