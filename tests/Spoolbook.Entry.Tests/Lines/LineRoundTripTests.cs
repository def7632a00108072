using System.Collections.Immutable;
using CsCheck;
using Spoolbook.Entry.Lines;
using Spoolbook.Reading;
using Spoolbook.Reading.Editing;
using Spoolbook.Reading.Files;
using YamlDotNet.RepresentationModel;

namespace Spoolbook.Entry.Tests.Lines;

/// <summary>What a roll file says can be said in lines, and comes back as it was.</summary>
public sealed class LineRoundTripTests
{
    const int Entries = 20_000;
    const int Nonsense = 20_000;

    public static TheoryData<string> Productions =>
        [Repository.Sample, .. TestFolders.NamesIn(TestFolders.Clean).Select(n => Path.Combine(TestFolders.Clean, n))];

    [Theory]
    [MemberData(nameof(Productions))]
    public void Every_entry_of_a_shoot_can_be_said_in_a_line(string folder)
    {
        var files = new FolderFiles(TestFolders.ProductionIn(folder));
        var production = ProductionReader.Read(files).Production!;
        var context = LineContext.Of(production with { Rolls = [] }, new DateOnly(2026, 10, 4));
        foreach (var roll in RollsIn(files))
        {
            var name = ((YamlScalarNode)roll["roll"]).Value!;
            context = Say(LineVerb.Load, name, [.. KeysOf(roll), .. KeysOf((YamlMappingNode)roll["load"])], context);
            foreach (var (word, keys) in LogOf(roll))
            {
                context = Say(VerbOf(word), name, keys, context);
            }

            if (roll.Children.TryGetValue("unload", out var unload))
            {
                context = Say(LineVerb.Unload, name, KeysOf((YamlMappingNode)unload), context);
            }
        }

        Assert.NotEmpty(context.Rolls);
    }

    [Fact]
    public void The_line_of_an_entry_is_as_short_as_it_is_said()
    {
        Assert.Equal("1A/4 to 70 f8 G soft", Written("1A/4 to 70 f8 G soft"));
        Assert.Equal(
            "1A/4 to 70+12 25mm f5.6 9ft G no filter at the end: G",
            Written("1A/4 70+12 f5.6 25mm 9ft no filter G: at the end: G").Replace(" : ", " ", StringComparison.Ordinal)
        );
        Assert.Equal("take scene 12A shot B take 3 to 70 G", Written("take scene 12A shot B take 3 70 G"));
        Assert.Equal("rewind 27+28 closed zeroed", Written("rewind 27+28 closed zeroed"));
        Assert.Equal("run off 100 capped 12:33", Written("run off 100 capped 12:33"));
        Assert.Equal("fog 1+20 2", Written("fog 1+20 2+00"));
        Assert.Equal("unload 16:45 tail 2 38 left", Written("unload 16:45 tail 2, 38 left"));
        Assert.Equal("load R04 N250-A/3 in B1 by ines 9:15 head 4", Written("load R04 N250-A/3 in B1 by ines 9:15 head 4"));
        Assert.Equal("note Clouds came in", Written("note Clouds came in"));
        Assert.Equal(
            "reload in B2 by ines to 39+20 13:40 dark zero-moved 1+08 lost 2",
            Written("reload 13:40 by ines in B2 dark zero-moved 1+08 lost 2 to 39+20")
        );
    }

    [Fact]
    public void Any_entry_written_as_a_line_reads_back_as_the_same_keys() =>
        AnyEntry.Sample(
            entry => Assert.NotNull(Say(entry.Verb, entry.Verb == LineVerb.Load ? "R04" : "R03", entry.Keys, Said.Context)),
            iter: Entries,
            threads: 1
        );

    [Fact]
    public void Nonsense_is_refused_with_one_finding_or_says_nothing_that_is_not_in_the_line() =>
        AnyNonsense.Sample(
            line =>
            {
                var read = Said.Line(line);
                if (read.Said is not { } said)
                {
                    Assert.True(read.Refused is null || LineChecks.All.Contains(read.Refused.Check), line);
                    Assert.True(read.Refused is null || (read.Refused.Message.Length > 0 && read.Refused.Help.Length > 0), line);
                    return;
                }

                // "next" alone is the shot of the take before.
                var isNext = line.Contains("next", StringComparison.OrdinalIgnoreCase);
                foreach (var key in said.Keys.Where(k => !said.TakenOver.Contains(k.Key) && !(isNext && k.Key is "scene" or "shot")))
                {
                    Assert.True(key.Values.All(v => IsIn(v, line)), $"{line} says {key.Key}: {string.Join(',', key.Values)}");
                }

                Assert.Equal(said.Keys.Length, said.Keys.Select(k => k.Key).Distinct().Count());
            },
            iter: Nonsense,
            threads: 1
        );

    // A value is some word of the line, or made of one: 70+00 of 70, good of G, the next number of a shot.
    static bool IsIn(string value, string line)
    {
        if (value is "yes" or "no" or "good" or "hold" or "ng" or "test" or "1" or "4")
        {
            return true;
        }

        var bare = value.EndsWith("+00", StringComparison.Ordinal) ? value[..^3] : value;
        bare = bare.StartsWith("2026-10-04 ", StringComparison.Ordinal) ? bare[11..] : bare;
        bare =
            (bare.EndsWith("fr", StringComparison.Ordinal) || bare.EndsWith("ft", StringComparison.Ordinal)) && char.IsAsciiDigit(bare[0])
                ? bare[..^2]
                : bare;
        return Squeezed(line).Contains(Squeezed(bare.TrimStart('0')), StringComparison.OrdinalIgnoreCase);
    }

    static string Squeezed(string text) => string.Concat(text.Where(c => c is not (' ' or '"' or '\\' or ',' or ';' or '/')));

    static string Written(string line)
    {
        var said = Said.Line(line).Said!;
        return LineWriter.Write(said.Verb, said.Roll, said.Keys, Said.Context);
    }

    // Writes an entry as a line, reads the line, and gives what holds after it.
    static LineContext Say(LineVerb verb, string roll, ImmutableArray<KeyValue> keys, LineContext context)
    {
        var line = LineWriter.Write(verb, roll, keys, context);
        var read = LineReader.Read(line, "day.txt", 1, context);

        Assert.True(read.Said is not null, $"{line}\n{read.Refused?.Place.Column}: {read.Refused?.Message} {read.Refused?.Help}");
        Assert.True(Text(read.Said.Keys) == Text(keys), $"{line}\n{Text(keys)}\n{Text(read.Said.Keys)}");
        Assert.DoesNotContain('\n', line);
        return context.After(read.Said);
    }

    static string Text(ImmutableArray<KeyValue> keys) =>
        string.Join(", ", keys.OrderBy(k => k.Key, StringComparer.Ordinal).Select(k => $"{k.Key}: [{string.Join("|", k.Values)}]"));

    static IEnumerable<YamlMappingNode> RollsIn(FolderFiles files)
    {
        foreach (var name in files.Names)
        {
            var yaml = new YamlStream();
            yaml.Load(new StringReader(files.Open(name).Text!));
            if (yaml.Documents is not [{ RootNode: YamlMappingNode root }])
            {
                continue;
            }

            if (root.Children.ContainsKey("roll"))
            {
                yield return root;
            }

            foreach (
                var roll in root.Children.TryGetValue("rolls", out var rolls) ? ((YamlSequenceNode)rolls).OfType<YamlMappingNode>() : []
            )
            {
                yield return roll;
            }
        }
    }

    static IEnumerable<(string Word, ImmutableArray<KeyValue> Keys)> LogOf(YamlMappingNode roll)
    {
        foreach (var entry in roll.Children.TryGetValue("log", out var log) ? (YamlSequenceNode)log : [])
        {
            var (word, value) = ((YamlMappingNode)entry).Single();
            yield return (
                ((YamlScalarNode)word).Value!,
                value is YamlMappingNode map ? KeysOf(map)
                : word is YamlScalarNode { Value: "note" } ? [new KeyValue("note", ((YamlScalarNode)value).Value!)]
                : []
            );
        }
    }

    static ImmutableArray<KeyValue> KeysOf(YamlMappingNode map) =>
        [
            .. from pair in map
            let key = ((YamlScalarNode)pair.Key).Value!
            where pair.Value is YamlScalarNode { Value.Length: > 0 } or YamlSequenceNode && key is not ("log" or "accept" or "spoolbook")
            select new KeyValue(
                key,
                pair.Value is YamlSequenceNode list
                    ? [.. list.Cast<YamlScalarNode>().Select(s => s.Value!)]
                    : [((YamlScalarNode)pair.Value).Value!]
            ),
        ];

    static LineVerb VerbOf(string word) =>
        word switch
        {
            "take" => LineVerb.Take,
            "rewind" => LineVerb.Rewind,
            "run-off" => LineVerb.RunOff,
            "fog" => LineVerb.Fog,
            "wind" => LineVerb.Wind,
            "note" => LineVerb.Note,
            _ => LineVerb.Reload,
        };

    static readonly Gen<string> _free = Gen.OneOf(
            Gen.String[Gen.Char["abcG175 /:\",;#+-.é\\"], 1, 12],
            Gen.OneOf(
                "G",
                "75",
                "to 70",
                "light daylight",
                "-",
                "no filter",
                "#K3-12 wind",
                "soft at the end",
                "Leila: again",
                "a \"b\" c",
                "\"x\"",
                "R03: wind"
            )
        )
        .Where(t => t.Trim().Length > 0 && t == t.Trim());

    static readonly Gen<string> _length = Gen.OneOf(
        Gen.Select(Gen.Int[0, 99], Gen.Int[0, 39], (feet, frames) => $"{feet}+{frames:00}"),
        Gen.Int[1, 4000].Select(n => $"{n}fr"),
        Gen.OneOf("12s", "9.5m", "70ft", "31.3ft", "31ft 12fr")
    );

    static readonly Gen<string> _stop = Gen.OneOf("8", "5.6", "f/8", "T2", "8/11", "5.6 1/3", "f8");

    static readonly Gen<string> _distance = Gen.OneOf("9ft", "5ft 6in", "5ft6in", "1.8m", "80cm", "450mm", "30in", "inf", "6 ft");

    static readonly Gen<string> _day = Gen.OneOf("2026-10-04", "2026-10-05");

    static Gen<string> ValueOf(EntryKey key) =>
        key.Kind switch
        {
            ValueKind.Length => _length,
            ValueKind.Frames => Gen.OneOf("48fr", "96fr", "1+08", "2s"),
            ValueKind.Speed => Gen.OneOf("24", "16fps", "23.976", "24000/1001"),
            ValueKind.Stop => _stop,
            ValueKind.Distance => _distance,
            ValueKind.Date => _day,
            ValueKind.Moment => Gen.OneOf("2026-10-04 09:15", "2026-10-05 9:15", "2026-10-04T09:15", "2026-10-04 09:15:30"),
            ValueKind.Clock => Gen.OneOf("09:15", "9:15", "13:52"),
            ValueKind.YesNo => Gen.OneOf("yes", "no", "true", "false", "Yes"),
            ValueKind.Choice => Gen.OneOf(Gen.OneOf([.. key.Words]), Gen.OneOf([.. key.Words.Select(w => w.ToUpperInvariant())])),
            ValueKind.Text => Gen.OneOf(
                Gen.OneOf("10mm", "25mm", "75", "85", "ND6", "M1", "E1", "ines", "B2", "half", "R03", "N250-A"),
                _free
            ),
            _ => key.Name switch
            {
                "single-frame" => Gen.OneOf("ones", "2"),
                "metered-at" => Gen.OneOf("1/80", "2s"),
                _ => Gen.Const(key.Example.Trim('"')),
            },
        };

    static Gen<KeyValue> KeyOf(EntryKey key) =>
        key.Many
            ? ValueOf(key)
                .Where(v => key.Kind != ValueKind.Text || v.Length > 0)
                .Array[1, 3]
                .Select(v => new KeyValue(key.Name, [.. v.Distinct()]))
            : ValueOf(key).Select(v => new KeyValue(key.Name, v));

    static readonly Dictionary<EntryKey, Gen<KeyValue>> _values = [];

    static readonly Gen<(LineVerb Verb, ImmutableArray<KeyValue> Keys)> AnyEntry = Gen.OneOf(
            (LineVerb.Take, EntryTables.Take),
            (LineVerb.Wind, EntryTables.Wind),
            (LineVerb.Rewind, EntryTables.Rewind),
            (LineVerb.RunOff, EntryTables.RunOff),
            (LineVerb.Fog, EntryTables.Fog),
            (LineVerb.Reload, EntryTables.Reload),
            (LineVerb.Note, EntryTables.Remark),
            (LineVerb.Load, EntryTables.Load),
            (LineVerb.Unload, EntryTables.Unload)
        )
        .SelectMany(kind =>
            Gen.Shuffle(Enumerable.Range(0, kind.Item2.Keys.Length).ToArray(), 0, Math.Min(8, kind.Item2.Keys.Length))
                .SelectMany(chosen => Values(Possible(kind.Item2, chosen)))
                .Select(keys => (kind.Item1, keys))
        );

    static Gen<ImmutableArray<KeyValue>> Values(IEnumerable<EntryKey> keys) =>
        keys.Aggregate(Gen.Const(ImmutableArray<KeyValue>.Empty), (some, key) =>
            Gen.Select(some, ValueOfOne(key), (values, more) => values.Add(more))
        );

    static Gen<KeyValue> ValueOfOne(EntryKey key)
    {
        if (!_values.TryGetValue(key, out var value))
        {
            _values[key] = value = key.Name == "roll" ? Gen.Const(new KeyValue("roll", "R04")) : KeyOf(key);
        }

        return value;
    }

    // What an entry needs is in it, and nothing that says the same in two ways.
    static IEnumerable<EntryKey> Possible(EntryTable table, int[] chosen)
    {
        var names = chosen.Select(i => table.Keys[i].Name).Concat(table.Keys.Where(k => k.Required).Select(k => k.Name)).ToHashSet();
        if (table.Either is [var one, var other])
        {
            var (kept, dropped) = names.Contains(other) ? (other, one) : (one, other);
            names.Remove(dropped);
            names.Add(kept);
        }

        foreach (var (first, second) in table.NotBoth)
        {
            if (names.Contains(first))
            {
                names.Remove(second);
            }
        }

        if (table.Word == "note" && names.Count == 0)
        {
            names.Add("note");
        }

        return table.Keys.Where(k => names.Contains(k.Name));
    }

    static readonly Gen<string> AnyNonsense = Gen.OneOf(
            Gen.OneOf(
                "1A/4",
                "1A/",
                "next",
                "take",
                "wind",
                "rewind",
                "run off",
                "run",
                "fog",
                "reload",
                "note",
                "load",
                "unload",
                "amend",
                "strike",
                "day",
                "last",
                "#K3-12",
                "R03:",
                "to",
                "70",
                "70+12",
                "75",
                "25mm",
                "f8",
                "f",
                "T2",
                "5.6",
                "1/2",
                "1/3",
                "9ft",
                "5ft",
                "6in",
                "inf",
                "G",
                "NG",
                "good",
                "13:52",
                "9:15",
                "2026-10-04",
                "ones",
                "daylight",
                "50hz",
                "lens",
                "filter",
                "no",
                "yes",
                "-",
                "ND6,PL",
                "85",
                "mute",
                "wound",
                "sync",
                "fade-out",
                "48",
                "48fr",
                "12s",
                "left",
                "tail",
                "in",
                "by",
                "ines",
                "B1",
                "dark",
                "closed",
                "open",
                "zeroed",
                "kept",
                "short end of",
                "R04",
                "N250-A/3",
                "soft",
                "the",
                "end",
                ":",
                "G:",
                "\"a b\"",
                "\"",
                "lens:",
                "on",
                "at",
                "head",
                "4",
                ",",
                "é"
            ),
            Gen.String[Gen.Char["aGf1257/:\",;#+-. "], 0, 6]
        )
        .Array[0, 9]
        .Select(words => string.Join(' ', words));
}
