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
        ledger.Moment("taken-out", record.Unload?.On.Value);
        ledger.Count("passes", roll.Strip.Passes);
        ledger.Use("use", UseOfFilm.Of(roll.Tally, roll.Layers, source.Shoot.Production.ProjectedAt));
        ledger.Objects("takes", roll.Layers, Take);
        ledger.Objects("film", roll.Strip.Segments, Stretch);
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
