using System.Security.Cryptography;
using System.Text.RegularExpressions;
using Spoolbook.Fuzz.Mutations;

namespace Spoolbook.Fuzz.Running;

/// <summary>The inputs worth spoiling: those that somebody wrote, and those that reached something new.</summary>
internal sealed partial class Corpus
{
    const int MostWords = 4_000;
    const int LongestWord = 30;

    readonly string _kept;
    readonly List<byte[]> _inputs = [];

    public Corpus(Places places)
    {
        _kept = places.Kept;
        _inputs.AddRange(Files(places.Seeds).Select(File.ReadAllBytes));
        Words =
        [
            .. _inputs
                .SelectMany(i => Word().Matches(Utf8.Text(i)))
                .Select(m => m.Value)
                .Where(w => w.Length <= LongestWord)
                .Distinct()
                .Take(MostWords),
        ];
        _inputs.AddRange(Files(places.Kept).Select(File.ReadAllBytes));
        if (_inputs.Count == 0)
        {
            _inputs.Add([]);
        }
    }

    public IReadOnlyList<byte[]> Inputs => _inputs;

    public IReadOnlyList<string> Words { get; }

    public void Keep(byte[] input)
    {
        _inputs.Add(input);
        var name = Path.Combine(_kept, Convert.ToHexString(SHA256.HashData(input))[..16]);
        File.WriteAllBytes(name + ".new", input);
        File.Move(name + ".new", name, overwrite: true);
    }

    /// <summary>One to spoil: the latest half the time, and of two the shorter.</summary>
    public byte[] Choose(Chance chance)
    {
        var (one, other) = (Any(chance), Any(chance));
        return one.Length <= other.Length ? one : other;
    }

    byte[] Any(Chance chance) =>
        _inputs[chance.OneIn(2) ? chance.Below(_inputs.Count) : _inputs.Count - 1 - chance.Below(Math.Min(_inputs.Count, 40))];

    static IEnumerable<string> Files(string folder) =>
        Directory.Exists(folder)
            ? Directory.EnumerateFiles(folder).Where(f => !f.EndsWith(".new", StringComparison.Ordinal)).Order(StringComparer.Ordinal)
            : [];

    [GeneratedRegex(@"[\p{L}\p{N}][\p{L}\p{N}_./+-]*", RegexOptions.CultureInvariant)]
    private static partial Regex Word();
}
