using System.Collections.Immutable;
using System.Text.Json.Nodes;
using CsCheck;
using Spoolbook.Reading.Editing;
using Xunit.Abstractions;

namespace Spoolbook.Reading.Tests.Editing;

/// <summary>Laws of editing, tried on every roll of the sample and of the clean productions.</summary>
public sealed class EditLawTests(ITestOutputHelper output)
{
    const int Rounds = 2000;

    static readonly (string Text, int Rolls)[] _files =
    [
        .. from folder in Directory.GetDirectories(TestFolders.Clean).Order(StringComparer.Ordinal).Append(Repository.Sample)
        from file in Directory.GetFiles(folder, "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
        let text = File.ReadAllText(file)
        let rolls = text.Split('\n').Count(line => line.TrimStart(' ', '-').StartsWith("roll:", StringComparison.Ordinal))
        where rolls > 0
        select (text, rolls),
    ];

    static readonly string[] _words = ["take", "rewind", "run-off", "fog", "wind", "note", "reload"];

    static readonly string[] _takeKeys =
    [
        "to",
        "lens",
        "stop",
        "filter",
        "focus",
        "mark",
        "note",
        "at",
        "counter",
        "speed",
        "reading",
        "by",
    ];

    static readonly Dictionary<string, string[]> _keys = new()
    {
        ["take"] = _takeKeys,
        ["rewind"] = ["to", "shutter", "in", "counter-zeroed", "counter", "at", "note"],
        ["run-off"] = ["to", "lens", "at", "dial", "note"],
        ["fog"] = ["before", "after", "at", "note"],
        ["wind"] = ["at", "note"],
        ["note"] = ["note", "at", "day"],
        ["reload"] = ["on", "by", "light", "lost", "to", "note"],
        ["roll"] = ["lot", "unit", "short-end-of", "length", "body", "rated", "practice"],
        ["load"] = ["on", "by", "light", "head", "loops", "ready", "except", "speed-after"],
        ["unload"] = ["on", "by", "light", "tail", "short-end"],
    };

    static readonly string[] _sayings =
    [
        "25mm",
        "9ft",
        "70+00",
        "2026-10-04 09:10",
        "a: b",
        "x #y",
        "[z",
        "yes",
        "null",
        "«ж»",
        "it's",
        "{",
        "a, b",
    ];

    static readonly Gen<string> _value = Gen.OneOf(
        Gen.Int[0, _sayings.Length - 1].Select(i => _sayings[i]),
        Gen.Char[": #{}[],&*!|>'\"%@`-?~\\\n\tab0"].Array[1, 8].Select(chars => new string(chars))
    );

    static readonly Gen<ImmutableArray<string>> _values = _value.Array[0, 2].Select(v => v.ToImmutableArray());

    // What changes, which entry, which of its possible keys, and their new values.
    static readonly Gen<(int What, int Entry, int Keys, ImmutableArray<string>[] Values)> _edit = Gen.Select(
        Gen.Int[0, 9],
        Gen.Int[0, 200],
        Gen.Int[0, 4095],
        _values.Array[12]
    );

    [Fact]
    public void An_edit_changes_what_was_asked_for_and_no_other_character()
    {
        var (edits, refused) = (0, 0);
        Gen.Select(Gen.Int[0, _files.Length - 1], Gen.Int[0, 50], Gen.Int[0, 3], Gen.Int[0, 400], _edit.Array[4, 10])
            .Sample(
                (file, number, style, comments, asked) =>
                {
                    var text = Commented(_files[file].Text, comments).ReplaceLineEndings(style == 1 ? "\r\n" : "\n");
                    text = style == 2 ? text.TrimEnd('\n') : text;
                    number %= _files[file].Rolls;
                    var (before, expected) = (new RollModel(text, number), new RollModel(text, number));
                    var touched = new HashSet<int>();
                    var changes = Changes(asked, before, expected, touched);

                    var edited = RollText.Open("roll.yaml", text, before.Head)!.Change(changes);

                    Interlocked.Add(ref edits, changes.Count);
                    if (edited.Text is not { } after)
                    {
                        // Only a key can be refused: an entry goes in and out anywhere.
                        Assert.Contains(changes, c => c is ChangedEntry or ChangedPart or RemovedUnload);
                        Assert.Contains("the comment beside it", edited.Fault!.Message, StringComparison.Ordinal);
                        Interlocked.Increment(ref refused);
                        return;
                    }

                    Assert.Equal(expected.ToString(), new RollModel(after, number).ToString());
                    AssertUntouched(text, after, touched);
                    Assert.Equal(CommentsOf(text), CommentsOf(after));
                },
                iter: Rounds,
                threads: 2
            );
        output.WriteLine($"{edits} edits, {refused} refused");
        Assert.True(edits >= 10_000, $"only {edits} edits");
        Assert.True(refused * 5 < Rounds, $"{refused} refused");
    }

    static List<RollChange> Changes(
        (int What, int Entry, int Keys, ImmutableArray<string>[] Values)[] asked,
        RollModel before,
        RollModel expected,
        HashSet<int> touched
    )
    {
        var changes = new List<RollChange>();
        var log = expected.Log.ToArray();
        var gone = new List<JsonNode?>();
        var added = new List<(int After, JsonNode Entry)>();
        var met = new HashSet<string>();
        foreach (var (what, at, which, values) in asked)
        {
            var i = log.Length == 0 ? -1 : at % log.Length;
            var (word, entry) = i < 0 ? default : log[i]!.AsObject().First();
            switch (what)
            {
                case < 4 when i >= 0 && met.Add($"{i}"):
                    var keys = Keys(word, which, values);
                    changes.Add(new ChangedEntry(before.PlaceOf(i), keys));
                    RollModel.Change(entry!.AsObject(), keys);
                    Touch(before.LinesOf(i));
                    break;
                case 4 when i >= 0 && met.Add($"{i}"):
                    changes.Add(new RemovedEntry(before.PlaceOf(i)));
                    gone.Add(log[i]);
                    Touch(before.LinesOf(i));
                    break;
                case 5 or 6 when met.Add($"add {i}"):
                    var (kind, isLast) = (_words[which % _words.Length], i < 0 || i == log.Length - 1);
                    var said = Keys(kind, which, values).Where(k => !k.Values.IsEmpty).ToImmutableArray();
                    changes.Add(isLast ? AddedEntry.Last(kind, said) : new AddedEntry(before.PlaceOf(i), kind, said));
                    var map = new JsonObject();
                    RollModel.Change(map, said);
                    added.Add((i, new JsonObject { [kind] = map }));
                    break;
                case 7 or 8 when met.Add($"part {which % 3}"):
                    Part((RollPart)(which % 3), which, values);
                    break;
                case 9 when expected.Roll.ContainsKey("unload") && met.Add("part 2"):
                    changes.Add(new RemovedUnload());
                    // The boxes at the foot of the sheet are added up when the roll comes out.
                    foreach (var key in ((string[])["unload", "totals"]).Where(expected.Roll.ContainsKey))
                    {
                        expected.Roll.Remove(key);
                        Touch(before.LinesOf(key));
                    }

                    break;
            }
        }

        foreach (var (after, entry) in added)
        {
            expected.Log.Insert(after < 0 ? 0 : expected.Log.IndexOf(log[after]) + 1, entry);
        }

        gone.ForEach(g => expected.Log.Remove(g));
        return changes;

        void Part(RollPart part, int which, ImmutableArray<string>[] values)
        {
            var name =
                part == RollPart.Roll ? "roll"
                : part == RollPart.Load ? "load"
                : "unload";
            var keys = Keys(name, which, values);
            changes.Add(new ChangedPart(part, keys));
            if (part == RollPart.Roll)
            {
                foreach (var key in keys.Where(k => before.Roll.ContainsKey(k.Key)))
                {
                    Touch(before.LinesOf(key.Key));
                }

                RollModel.Change(expected.Roll, keys);
                return;
            }

            if (before.Roll.ContainsKey(name))
            {
                Touch(before.LinesOf(name));
            }
            else
            {
                expected.Roll[name] = new JsonObject();
            }

            RollModel.Change(expected.Roll[name]!.AsObject(), keys);
        }

        void Touch((int From, int To) lines) => touched.UnionWith(Enumerable.Range(lines.From, lines.To - lines.From));
    }

    static ImmutableArray<KeyValue> Keys(string of, int which, ImmutableArray<string>[] values) =>
        [.. _keys[of].Index().Where(k => (which >> k.Index & 1) == 1).Select(k => new KeyValue(k.Item, values[k.Index]))];

    // Every line outside the edits is still in the new text, in its order.
    static void AssertUntouched(string before, string after, HashSet<int> touched)
    {
        var left = new Queue<string>(before.Split('\n').Where((_, i) => !touched.Contains(i)));
        foreach (var line in after.Split('\n'))
        {
            if (left.TryPeek(out var next) && (line == next || line == next + "\r"))
            {
                left.Dequeue();
            }
        }

        Assert.True(left.All(line => line.Length == 0), $"This line was changed: {left.FirstOrDefault(line => line.Length > 0)}");
    }

    // Comments as people write them: on lines of their own, and behind what is written.
    static string Commented(string text, int seed)
    {
        var lines = text.TrimEnd('\n').Split('\n').ToList();
        for (var (i, at) = (seed % 7, seed % 13); seed % 3 > 0 && at < lines.Count; at += 5 + (seed % 11), i++)
        {
            if (i % 2 == 0 && lines[at].Length > 0)
            {
                lines[at] += $" # beside {i}";
            }
            else
            {
                lines.Insert(at, new string(' ', lines[at].TakeWhile(c => c == ' ').Count()) + $"# above {i}");
            }
        }

        return string.Join('\n', lines) + "\n";
    }

    static List<string> CommentsOf(string text) =>
        [
            .. from line in text.Split('\n')
            let at = line.TrimStart().StartsWith('#') ? line.IndexOf('#') : line.LastIndexOf(" # beside", StringComparison.Ordinal)
            where at >= 0
            select line[at..].Trim(),
        ];
}
