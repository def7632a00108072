using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Spoolbook.Film;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Walks;

namespace Spoolbook.Acceptance.PocketLogs;

/// <summary>The pocket log's few sums, held against the program's own in a browser.</summary>
public sealed class PocketSumsTests(MadeSample sample) : IClassFixture<MadeSample>
{
    const int Cases = 400;

    static readonly Place _place = new("r.yaml", 1, 1, 1);

    static readonly Gen<Gauge> Gauges = Gen.Int[0, Gauge.All.Count - 1].Select(i => Gauge.All[i]);

    static readonly string[] _dial = ["12", "16", "18", "23.976", "24", "25", "29.97", "48", "64"];

    static readonly Gen<Speed> Speeds = Gen.Int[0, _dial.Length - 1]
        .Select(i => Speed.Parse(_dial[i]).TryGet(out var speed) ? speed : Speed.Normal);

    [ToolFact("chromium")]
    public async Task Feet_metres_and_seconds_are_those_of_the_program()
    {
        await using var telephone = await Telephone.With(sample.PathOf("pocket-log.html"));
        var cases = Gen.Select(Gauges, Gen.Long[0, 60_000], Gen.Long[0, 400], Gen.Long[0, 90], Gen.Int[0, 9_999], Speeds);
        await cases
            .Array[Cases]
            .SampleAsync(
                async drawn =>
                {
                    var asked = drawn.Select(c => new
                    {
                        perFoot = Fraction(c.Item1.FramesPerFoot),
                        frames = c.Item2,
                        feet = $"{c.Item3}+{c.Item4:00}",
                        metres = $"{c.Item5 / 100}.{c.Item5 % 100:00}m",
                        speed = Fraction(c.Item6.FramesPerSecond),
                    });
                    var found = await telephone.Ask(
                        $$"""
                        {{JsonSerializer.Serialize(asked)}}.map(c => {
                          Sums.perFoot = c.perFoot;
                          return [Sums.feetAndFrames(c.frames), Sums.metres(c.frames), Sums.seconds(c.frames, c.speed),
                            String(Sums.frames(c.feet)), String(Sums.frames(c.metres))].join(' ');
                        })
                        """
                    );
                    Assert.Equal(
                        drawn.Select(c =>
                        {
                            var film = new Footage(c.Item2);
                            var feet = FilmLength.Parse($"{c.Item3}+{c.Item4:00}", c.Item1).TryGet(out var written)
                                ? $"{written.In(c.Item1, Speed.Normal).Frames}"
                                : "null";
                            FilmLength.Parse($"{c.Item5 / 100}.{c.Item5 % 100:00}m", c.Item1).TryGet(out var metres);
                            var (length, seconds) = (film.Metres(c.Item1).ToText(2), film.Seconds(c.Item6).ToText(1));
                            var back = metres.In(c.Item1, Speed.Normal).Frames;
                            return $"{film.FeetAndFrames(c.Item1)} {length} {seconds} {feet} {back}";
                        }),
                        found.AsArray().Select(text => text!.GetValue<string>())
                    );
                },
                iter: 1
            );
    }

    [ToolFact("chromium")]
    public async Task Film_left_and_wind_left_after_any_log_are_those_of_the_program()
    {
        await using var telephone = await Telephone.With(sample.PathOf("pocket-log.html"));
        var logs = Gen.Select(Gen.Long[0, 5_000], Entry.Array[0, 9]);
        await logs.Array[Cases]
            .SampleAsync(
                async drawn =>
                {
                    var found = await telephone.Ask(
                        $$"""
                        {{JsonSerializer.Serialize(
                            drawn.Select(d => new { length = d.Item1, log = d.Item2.Select(e => e.Said) })
                        )}}.map(({ length, log }) => {
                          Sums.perFoot = [40, 1];
                          const start = { position: 160, zero: 0, driven: 0, spring: true, speed: '24', body: 'B1', length };
                          const at = log.reduce((at, entry) => Sums.after(at, entry), start);
                          return [at.position, at.zero, at.driven, at.speed, Sums.filmLeft(at), Sums.windLeft(at, 720)].join(' ');
                        })
                        """
                    );
                    Assert.Equal(drawn.Select(d => Walked(d.Item1, d.Item2)), found.AsArray().Select(text => text!.GetValue<string>()));
                },
                iter: 1
            );
    }

    // What the page writes of an entry, and what the program reads of it.
    static Gen<(JsonObject Said, LogEntry Read)> Entry =>
        Gen.Select(Gen.Int[0, 5], Gen.Long[0, 6_000], Gen.Long[0, 400], Speeds, Gen.Bool, Gen.Bool)
            .Select(
                (kind, to, part, speed, yes, also) =>
                {
                    var (end, piece) = (new Footage(to), new Footage(part));
                    var written = end.FeetAndFrames(Gauge.Film16);
                    return kind switch
                    {
                        0 => (new JsonObject { ["verb"] = "wind" }, new Wind(_place)),
                        1 => (new JsonObject { ["verb"] = "rewind", ["to"] = written }, new Rewind(_place) { To = At(end) }),
                        2 => (new JsonObject { ["verb"] = "run-off", ["to"] = written }, new RunOff(_place) { To = At(end) }),
                        3 => Reloaded(end, piece, yes, also),
                        _ => (
                            new JsonObject
                            {
                                ["verb"] = "take",
                                ["to"] = written,
                                ["speed"] = speed.ToString(),
                                ["motor"] = yes && also ? "E1" : null,
                                ["wound"] = yes && !also,
                            },
                            (LogEntry)
                                new Take(_place)
                                {
                                    Scene = At("1"),
                                    Number = At(1),
                                    To = At(end),
                                    Mark = At(Mark.Good),
                                    Speed = speed,
                                    Motor = yes && also ? At("E1") : null,
                                    Wound = yes && !also ? At(true) : null,
                                }
                        ),
                    };
                }
            );

    static (JsonObject Said, LogEntry Read) Reloaded(Footage to, Footage part, bool saysWhere, bool moved) =>
        (
            new JsonObject
            {
                ["verb"] = "reload",
                ["to"] = saysWhere ? to.FeetAndFrames(Gauge.Film16) : "",
                ["lost"] = part.FeetAndFrames(Gauge.Film16),
                ["zeroMoved"] = moved ? part.FeetAndFrames(Gauge.Film16) : "",
            },
            new Reload(_place)
            {
                To = saysWhere ? At(to) : null,
                Lost = At(part),
                ZeroMoved = moved ? At(part) : null,
            }
        );

    static string Walked(long length, IEnumerable<(JsonObject Said, LogEntry Read)> log)
    {
        var start = new RollStand
        {
            Length = new Footage(length),
            Position = new Footage(160),
            Furthest = new Footage(160),
        };
        var at = log.Aggregate(start, (stand, entry) => stand.After(entry.Read));
        var filmLeft = Footage.Max(Footage.Zero, new Footage(length) - at.Position!.Value);
        var windLeft = at.IsOnSpring ? $"{Footage.Max(Footage.Zero, new Footage(720) - at.Driven).Frames}" : "";
        return $"{at.Position!.Value.Frames} {at.Zero.Frames} {at.Driven.Frames} {at.Speed} {filmLeft.Frames} {windLeft}";
    }

    static Located<T> At<T>(T value) => new(value, _place);

    static ImmutableArray<long> Fraction(Ratio ratio) => [(long)ratio.Numerator, (long)ratio.Denominator];
}
