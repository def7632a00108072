using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Film;
using Spoolbook.Reading.Editing;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Entry.Lines;

/// <summary>What the production says before a line: its names, its units, and how far each roll is.</summary>
public sealed record LineContext
{
    /// <summary>The gauge that feet are counted in.</summary>
    public Gauge Gauge { get; init; } = Gauge.Film16;

    /// <summary>The unit of a bare number on the film.</summary>
    public LengthUnit Units { get; init; }

    /// <summary>The date of a line that has a time and no date.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>The lenses, by their names in the kit.</summary>
    public ImmutableArray<string> Lenses { get; init; } = [];

    public ImmutableArray<string> Filters { get; init; } = [];

    public ImmutableArray<string> Meters { get; init; } = [];

    public ImmutableArray<string> Motors { get; init; } = [];

    /// <summary>The people, by id.</summary>
    public ImmutableArray<string> People { get; init; } = [];

    /// <summary>The bodies, each with its shutter's marks.</summary>
    public ImmutableArray<ShutterNames> Bodies { get; init; } = [];

    public ImmutableArray<string> Lots { get; init; } = [];

    /// <summary>The shots of the shot list and of the takes.</summary>
    public ImmutableArray<ShotNumber> Shots { get; init; } = [];

    public ImmutableArray<RollSoFar> Rolls { get; init; } = [];

    /// <summary>The roll of a line that names none; null means the only one in a camera.</summary>
    public string? Roll { get; init; }

    /// <summary>The rolls in a camera.</summary>
    public IEnumerable<RollSoFar> Open => Rolls.Where(r => !r.IsOut);

    /// <param name="today">The date of lines without one.</param>
    public static LineContext Of(Books books, DateOnly today) => Of(books.Production, today);

    /// <param name="today">The date of lines without one.</param>
    public static LineContext Of(Production production, DateOnly today)
    {
        var context = new LineContext
        {
            Gauge = production.Gauge,
            Units = production.Units,
            Day = today,
            Lenses = [.. production.Lenses.Select(l => l.Name.Value)],
            Filters = [.. production.Filters.Select(f => f.Name.Value)],
            Meters = [.. production.Meters.Select(m => m.Name.Value)],
            Motors = [.. production.Motors.Select(m => m.Name.Value)],
            People = [.. production.People.Select(p => p.Id.Value)],
            Bodies = [.. production.Bodies.Select(b => new ShutterNames(b.Name.Value, [.. b.ShutterMarks.Select(m => m.Name.Value)]))],
            Lots = [.. production.Lots.Select(l => l.Name.Value)],
            Shots = [.. production.Shots.Select(s => new ShotNumber(s.Scene.Value, s.Shot?.Value, 0))],
        };
        foreach (var roll in production.Rolls)
        {
            context = context.With(new RollSoFar(roll.Name.Value) { Body = roll.Body?.Value });
            foreach (var entry in roll.Log)
            {
                context = context.After(roll.Name.Value, entry);
            }

            context = roll.Unload is { } unload
                ? context.With(context.RollNamed(roll.Name.Value)! with { Out = unload.On.Value, Last = LineVerb.Unload })
                : context;
        }

        return context;
    }

    public RollSoFar? RollNamed(string name) => Rolls.FirstOrDefault(r => r.Name == name);

    /// <summary>What is known once a line is written.</summary>
    public LineContext After(SaidLine said) =>
        said switch
        {
            { Verb: LineVerb.Day, Day: { } day } => this with { Day = day },
            { Verb: LineVerb.Load, Roll: { } name } => With(new RollSoFar(name) { Body = said["body"] is [var body] ? body : TheOnlyBody }),
            { Roll: { } name } when RollNamed(name) is { } roll => said.Verb switch
            {
                LineVerb.Unload => With(
                    roll with
                    {
                        Out = DateTime.Parse(said["on"][0], CultureInfo.InvariantCulture),
                        Last = LineVerb.Unload,
                    }
                ),
                LineVerb.Reload when said["body"] is [var body] => With(roll with { Body = body, Last = LineVerb.Reload }),
                LineVerb.Take => AfterTake(roll, said.Keys),
                LineVerb.Strike when said.Target is { IsLast: true } && roll.IsOut => With(roll with { Out = null, Last = null }),
                LineVerb.Strike => With(roll with { Last = null }),
                LineVerb.Amend when said.Target?.Slate is { } slate && roll.Slates is [.., var last] && slate == last => With(
                    roll with
                    {
                        LastTake = Amended(roll.LastTake, said),
                    }
                ),
                LineVerb.Amend => this,
                _ => With(roll with { Last = said.Verb }),
            },
            _ => this,
        };

    /// <summary>What is known once an entry is in a roll's log.</summary>
    public LineContext After(string name, LogEntry entry) =>
        (RollNamed(name), entry) switch
        {
            ({ } roll, Take take) => AfterTake(roll, KeysOf(take)),
            ({ } roll, Reload { Body.Value: var body }) => With(roll with { Body = body, Last = LineVerb.Reload }),
            ({ } roll, _) => With(roll with { Last = LineGrammar.OfEntry(entry.Word) }),
            _ => this,
        };

    internal string? TheOnlyBody => Bodies is [var only] ? only.Body : null;

    /// <summary>The same with a roll added, or replaced by name.</summary>
    public LineContext With(RollSoFar roll)
    {
        for (var i = 0; i < Rolls.Length; i++)
        {
            if (Rolls[i].Name == roll.Name)
            {
                return this with { Rolls = Rolls.SetItem(i, roll) };
            }
        }

        return this with
        {
            Rolls = Rolls.Add(roll),
        };
    }

    LineContext AfterTake(RollSoFar roll, ImmutableArray<KeyValue> keys)
    {
        var (scene, shot) = (One(keys, TakeKeyNames.Scene), One(keys, TakeKeyNames.Shot));
        var number = One(keys, TakeKeyNames.Number);
        if (scene is null || !int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var take))
        {
            return this;
        }

        return With(roll with { LastTake = keys, Last = LineVerb.Take, Slates = roll.Slates.Add($"{scene}{shot}/{number}") }) with
        {
            Shots = Noted(scene, shot, take),
        };
    }

    ImmutableArray<ShotNumber> Noted(string scene, string? shot, int take)
    {
        for (var i = 0; i < Shots.Length; i++)
        {
            if (Shots[i].Scene == scene && Shots[i].Shot == shot)
            {
                return take > Shots[i].Last ? Shots.SetItem(i, Shots[i] with { Last = take }) : Shots;
            }
        }

        return Shots.Add(new ShotNumber(scene, shot, take));
    }

    static ImmutableArray<KeyValue> Amended(ImmutableArray<KeyValue> keys, SaidLine said) =>
        [.. keys.Where(k => said[k.Key].IsEmpty && !said.NotNoted.Contains(k.Key)), .. said.Keys];

    static string? One(ImmutableArray<KeyValue> keys, string name) =>
        keys.FirstOrDefault(k => k.Key == name) is { Values: [var one] } ? one : null;

    // What a take can hand on to the next one, as a person writes it.
    static ImmutableArray<KeyValue> KeysOf(Take take)
    {
        var keys = ImmutableArray.CreateBuilder<KeyValue>();
        Add(TakeKeyNames.Scene, take.Scene.Value);
        Add(TakeKeyNames.Shot, take.Shot?.Value);
        Add(TakeKeyNames.Number, take.Number.Value.ToString(CultureInfo.InvariantCulture));
        Add(TakeKeyNames.Lens, take.Lens?.Value);
        Add(TakeKeyNames.Stop, take.Stop?.Value.ToString());
        Add(TakeKeyNames.Focus, take.Focus is { } focus ? Written(focus.Value) : null);
        if (!take.Filters.IsEmpty)
        {
            keys.Add(new KeyValue(TakeKeyNames.Filter, [.. take.Filters.Select(f => f.Value)]));
        }

        return keys.ToImmutable();

        void Add(string key, string? value)
        {
            if (value is not null)
            {
                keys.Add(new KeyValue(key, value));
            }
        }
    }

    // As written, but with the blank between a number and its unit left out: 5ft 6in.
    static string? Written(Distance focus)
    {
        if (focus.IsInfinity)
        {
            return "inf";
        }

        var text = new System.Text.StringBuilder();
        foreach (var part in (focus.Written ?? "").Split(' '))
        {
            text.Append(text.Length > 0 && part.Length > 0 && char.IsAsciiDigit(part[0]) ? " " : "").Append(part);
        }

        return text.Length == 0 ? null : text.ToString();
    }
}
