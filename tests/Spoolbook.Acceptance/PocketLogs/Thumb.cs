using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Acceptance.PocketLogs;

/// <summary>
/// Taps a record in as its assistant would have tapped it on set: only what is other than on the take before, by the buttons and the
/// pads. On the way it makes two mistakes, and puts them right.
/// </summary>
internal sealed class Thumb(Telephone telephone)
{
    const int FramesPerFoot = 40;

    // The take of which the mark was wrong, and the one that was logged by mistake.
    const string Corrected = "1B/2",
        AfterMistake = "3A/2";

    readonly Dictionary<string, string> _sheet = [];
    string? _who;

    /// <summary>A day of rolls in one camera.</summary>
    public async Task Tap(Production production)
    {
        foreach (var roll in production.Rolls.OrderBy(r => r.Load.On.Value))
        {
            await Load(roll, isFirst: _who is null);
            var day = DateOnly.FromDateTime(roll.Load.On.Value);
            foreach (var entry in roll.Log)
            {
                if (entry.At is { Value: var at })
                {
                    // Hours before the load are of the night after it.
                    await Clock((at < TimeOnly.FromDateTime(roll.Load.On.Value) ? day.AddDays(1) : day).ToDateTime(at));
                }

                await Tap(entry);
            }

            await Unload(roll.Unload!);
        }
    }

    async Task Load(Roll roll, bool isFirst)
    {
        var load = roll.Load;
        await Clock(load.On.Value);
        var by = load.By!.Value;
        if (!isFirst && _who != by)
        {
            await telephone.Tap("#who");
            await telephone.Tap($"#choose [data-do=pick][data-with={by}]");
        }

        await telephone.Tap("#b-form-load");
        if (isFirst)
        {
            await telephone.Rewrite("#f-roll", roll.Name.Value);
            await telephone.Choose("by", by);
        }

        _who = by;
        await telephone.Choose("stock", string.Create(CultureInfo.InvariantCulture, $"{roll.Unit!.Value - 1}"));
        await Light(load.Light!.Value);
        foreach (var point in (string[])["gate", "loops", "plate", "slot", "cut-off", "run-test"])
        {
            await telephone.Tap($"label:has(#f-ready-{point})");
        }

        await telephone.Length("head", Keys(load.Head!.Value));
        await telephone.Tap("#b-log");
        _sheet["speed"] = load.SpeedAfter!.Value.ToString();
    }

    async Task Unload(Unload unload)
    {
        await Clock(unload.On.Value);
        await telephone.Tap("#to-roll");
        await telephone.Tap("#b-form-unload");
        await Light(unload.Light!.Value);
        await telephone.Length("tail", Keys(unload.Tail!.Value));
        await telephone.Tap("#b-log");
    }

    async Task Light(LoadingLight light) => await telephone.Tap($"label:has(#f-light-{light.ToString().ToLowerInvariant()})");

    async Task Tap(LogEntry entry)
    {
        switch (entry)
        {
            case Take take when take.Slate == Corrected:
                await Tap(take, "NG", withRemark: false);
                await telephone.Tap("#to-log");
                await telephone.Tap($"#log-body [data-with='{await Last()}']");
                await Remark(take);
                await telephone.Tap($"#b-mark-{Mark(take)}");
                await telephone.Tap("#to-take");
                break;
            case Take take when take.Slate == AfterMistake:
                await Tap(take, "NG", withRemark: false);
                await telephone.Tap("#to-log");
                await telephone.Tap($"#log-body [data-with='{await Last()}']");
                await telephone.Tap("#take [data-do=strike]");
                await telephone.Tap("#take [data-do=strike]");
                await telephone.Tap("#to-take");
                await Tap(take, Mark(take), withRemark: true);
                break;
            case Take take:
                await Tap(take, Mark(take), withRemark: true);
                break;
            case Wind:
                await telephone.Tap("#b-wound");
                break;
            case Rewind rewind:
                await Form("rewind");
                await telephone.Length("to", Keys(rewind.To.Value));
                await telephone.Tap("label:has(#f-zeroed)");
                await telephone.Tap("#b-log");
                break;
            case RunOff:
                await Form("run-off");
                await telephone.Tap("#b-choose-to");
                await telephone.Tap("#choose [data-do=whole]");
                await telephone.Tap("#b-log");
                break;
            default:
                await Form("note");
                await telephone.Write("#f-remark", entry.Note!.Value);
                await telephone.Tap("#b-log");
                break;
        }
    }

    async Task Tap(Take take, string mark, bool withRemark)
    {
        while (await telephone.Text("#chip-slate") != take.Slate)
        {
            await telephone.Tap("#b-nextshot");
        }

        await Choose("speed", take.SpeedWritten?.Value.ToString());
        await Choose("lens", take.Lens!.Value);
        await Choose("stop", take.Stop!.Value.ToString());
        if (take.Reading is { } reading)
        {
            await telephone.Choose("reading", reading.Value.ToString());
        }

        await Filter(take.Filters.FirstOrDefault()?.Value ?? "");
        await Focus(take.Focus!.Value);
        foreach (var (name, fade) in ((string, Located<Footage>?)[])[("fadeIn", take.FadeIn), ("fadeOut", take.FadeOut)])
        {
            await Fade(name, fade?.Value);
        }

        if (withRemark)
        {
            await Remark(take);
        }

        await telephone.Pad(Keys(take.To.Value));
        await telephone.Tap("#b-mark-" + mark);
    }

    async Task Choose(string what, string? value)
    {
        if (value is not null && _sheet.GetValueOrDefault(what) != value)
        {
            await telephone.Choose(what, value);
            _sheet[what] = value;
        }
    }

    async Task Filter(string filter)
    {
        if (_sheet.GetValueOrDefault("filter", "") == filter)
        {
            return;
        }

        await telephone.Choose("filter", filter, "filter");
        if (filter.Length > 0)
        {
            await telephone.Tap("#b-done");
        }

        _sheet["filter"] = filter;
    }

    async Task Focus(Distance focus)
    {
        var keys = focus.IsInfinity ? "inf" : focus.Written!.Replace("ft", "", StringComparison.Ordinal).Trim();
        if (_sheet.GetValueOrDefault("focus") == keys)
        {
            return;
        }

        await telephone.Tap("#b-choose-focus");
        if (focus.IsInfinity)
        {
            await telephone.Tap("#choose [data-do=recent][data-with=inf]");
        }
        else
        {
            await telephone.Pad(keys);
            await telephone.Tap("#b-done");
        }

        _sheet["focus"] = keys;
    }

    async Task Fade(string name, Footage? length)
    {
        if (length is { } fade)
        {
            await telephone.Tap("#b-go-more");
            await telephone.Length(name, Keys(fade));
            await telephone.Tap("#b-back2take");
        }
    }

    async Task Remark(Take take)
    {
        if (take.Note is { } note)
        {
            await telephone.Tap("#b-choose-remark");
            await telephone.Write("#f-remark-take", note.Value);
            await telephone.Tap("#b-done");
        }
    }

    async Task Form(string verb)
    {
        await telephone.Tap("#b-go-more");
        await telephone.Tap("#b-form-" + verb);
    }

    async Task Clock(DateTime at) => await telephone.Clock(at.ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture));

    async Task<string> Last() => (await telephone.Ask("String(Store.state.next - 1)")).GetValue<string>();

    static string Mark(Take take) =>
        take.Mark.Value switch
        {
            Shoot.Records.Mark.Good => "G",
            Shoot.Records.Mark.Hold => "H",
            Shoot.Records.Mark.NoGood => "NG",
            _ => "T",
        };

    static string Keys(Footage length) =>
        length.Frames % FramesPerFoot is var over && over == 0
            ? string.Create(CultureInfo.InvariantCulture, $"{length.Frames / FramesPerFoot}")
            : string.Create(CultureInfo.InvariantCulture, $"{length.Frames / FramesPerFoot}+{over:d2}");
}
