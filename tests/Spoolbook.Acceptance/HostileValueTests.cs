using System.Text;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Spoolbook.Acceptance;

/// <summary>
/// Every value of the sample with a character in it that no editor shows, or that no font has: whatever is wrong with it is a finding,
/// and what the checks let pass is printed.
/// </summary>
public sealed class HostileValueTests : IDisposable
{
    static readonly (string Name, string Written)[] _hostile =
    [
        ("a vertical tab", "\\v"),
        ("a null character", "\\0"),
        ("an escape sequence", "\\e[2J"),
        ("no character", "\\uFFFE"),
        ("an override", "\\u202E"),
        ("half of a character", "\\uD83C"),
        ("the other half", "\\uDFAC"),
        ("emoji", string.Concat(Enumerable.Repeat("🎬👨‍👩‍👧e\u0301", 40))),
        ("a long word", new string('W', 3_000)),
    ];

    readonly Bench _bench = new();

    public static TheoryData<string> Files =>
        [
            .. Repository
                .FilesOf(Repository.Sample)
                .Where(f => f.EndsWith(".yaml", StringComparison.Ordinal))
                .Select(f => Path.GetRelativePath(Repository.Sample, f).Replace('\\', '/')),
        ];

    public void Dispose() => _bench.Dispose();

    [Theory]
    [MemberData(nameof(Files))]
    public void No_value_of_the_sample_breaks_a_check_whatever_character_is_in_it(string file)
    {
        var production = _bench.CopyOf(Repository.Sample);
        var path = Path.Combine(production, file);
        var text = File.ReadAllText(path);
        var values = Values(text);
        Assert.NotEmpty(values);

        // Each value in turn, and each time another character, until every character was in every value.
        foreach (var (name, written) in _hostile)
        {
            foreach (var group in values.Index().GroupBy(v => v.Index % Groups(values.Count), v => v.Item))
            {
                File.WriteAllText(path, Spoilt(text, [.. group], written));
                var (status, said, error) = _bench.Run("check", "production");

                Assert.True(status is 0 or 1, $"{name} in {file}, lines {string.Join(", ", group.Select(v => v.Start.Line))}: {error}");
                Assert.Equal("", error);
                Assert.DoesNotContain("spoolbook/fault", said, StringComparison.Ordinal);
                Assert.DoesNotContain(said, c => c is '\0' or '\v' or '\u001b' or '\u202e');
            }
        }
    }

    [Theory]
    [InlineData("\\v")]
    [InlineData("\\uFFFE\\u202E\\0\\e")]
    [InlineData("🎬👨‍👩‍👧e\u0301🎬🎬🎬🎬🎬🎬🎬🎬")]
    [InlineData("WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW")]
    public void What_a_person_wrote_of_the_sample_is_printed_whatever_character_is_in_it(string written)
    {
        var production = _bench.CopyOf(Repository.Sample);
        foreach (var path in Directory.EnumerateFiles(production, "*.yaml", SearchOption.AllDirectories))
        {
            var text = File.ReadAllText(path);
            File.WriteAllText(path, Spoilt(text, Values(text, "title", "note", "name", "address", "agreed", "what", "role"), written));
        }

        var (status, said, error) = _bench.Run("make", "production", "--draft", "--out", "papers");

        Assert.True(status is 0 or 1, said + error);
        Assert.Equal("", error);
        Assert.True(File.Exists(_bench.PathOf("papers/lab-order.pdf")), said);
        Assert.All(Directory.EnumerateFiles(_bench.PathOf("papers"), "*.html").Append(_bench.PathOf("papers/ledger.json")), paper =>
            Assert.DoesNotContain(File.ReadAllText(paper), c => c is '\0' or '\v' or '\u001b' or '\u202e' or '\ufffe')
        );
    }

    // Some values together, so that the test ends; none of them beside its neighbour.
    static int Groups(int values) => Math.Clamp(values / 12, 1, 12);

    /// <summary>The text with something put into the middle of values, which stand in double quotes then.</summary>
    static string Spoilt(string text, List<Scalar> values, string written)
    {
        var spoilt = new StringBuilder(text);
        foreach (var value in values.OrderByDescending(v => v.Start.Index))
        {
            var (from, to) = ((int)value.Start.Index, (int)value.End.Index);
            var middle = value.Value.Length / 2;
            spoilt.Remove(from, to - from).Insert(from, $"\"{Quoted(value.Value[..middle])}{written}{Quoted(value.Value[middle..])}\"");
        }

        return spoilt.ToString();
    }

    static string Quoted(string text) =>
        text.Replace("\\", "\\\\", StringComparison.Ordinal)
            .Replace("\"", "\\\"", StringComparison.Ordinal)
            .Replace("\n", "\\n", StringComparison.Ordinal);

    /// <summary>The values of a file on one line, all of them or those of some keys.</summary>
    static List<Scalar> Values(string text, params string[] keys)
    {
        var parser = new Parser(new StringReader(text));
        var values = new List<Scalar>();
        // Keys and values take turns in a map, and there is no key in a list.
        var open = new Stack<(bool IsMap, bool IsKey)>();
        var key = "";
        while (parser.MoveNext())
        {
            var e = parser.Current!;
            if (e is MappingEnd or SequenceEnd)
            {
                open.Pop();
                continue;
            }

            if (e is not NodeEvent)
            {
                continue;
            }

            var isKey = open.TryPeek(out var around) && around.IsMap && around.IsKey;
            if (around.IsMap)
            {
                open.Pop();
                open.Push((true, !isKey));
            }

            if (e is Scalar scalar && isKey)
            {
                key = scalar.Value;
            }
            else if (
                e is Scalar { Style: not (ScalarStyle.Literal or ScalarStyle.Folded) } value
                && (keys.Length == 0 || keys.Contains(key))
            )
            {
                values.Add(value);
            }
            else if (e is MappingStart or SequenceStart)
            {
                open.Push((e is MappingStart, true));
            }
        }

        return values;
    }
}
