using System.Collections.Immutable;

namespace Spoolbook.Beginning;

/// <summary>
/// A camera body: <c>B1: Spring-wound reflex, speeds 12 16 24 32, shutter 133, wind 18ft, takes 100ft</c>. What begins with none of
/// these words says what it is.
/// </summary>
/// <param name="What">What it is, in words; may be empty.</param>
/// <param name="Keys">What else is known, by its key in the kit, as YAML.</param>
internal sealed record BodyAnswer(string Name, string What, ImmutableSortedDictionary<string, string> Keys)
{
    public const string Example = "B1: Spring-wound 16 mm reflex, speeds 12 16 24 32, shutter 133, wind 18ft, takes 100ft";

    static readonly Dictionary<string, string> _words = new(StringComparer.OrdinalIgnoreCase)
    {
        ["speeds"] = "speeds",
        ["shutter"] = "shutter",
        ["wind"] = "full-wind",
        ["finder"] = "finder-loss",
        ["takes"] = "takes",
        ["serial"] = "serial",
    };

    public static Answered<BodyAnswer> Parse(string text, IReadOnlyCollection<string> taken)
    {
        var (name, parts) = NamedParts.Of(text);
        var what = new List<string>();
        var keys = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var part in parts)
        {
            if (part.Split(' ', 2, StringSplitOptions.TrimEntries) is [var word, var value] && _words.TryGetValue(word, out var key))
            {
                keys[key] =
                    key == "speeds" ? $"[{string.Join(", ", value.Split([' ', '/'], StringSplitOptions.RemoveEmptyEntries))}]" : value;
            }
            else
            {
                what.Add(part);
            }
        }

        // A bare `B1` is its name.
        if (name is null && parts is [var only] && !only.Contains(' ', StringComparison.Ordinal))
        {
            (name, what) = (only, []);
        }

        return Answered<BodyAnswer>.As(
            new BodyAnswer(
                name ?? Enumerable.Range(1, 99).Select(n => $"B{n}").First(n => !taken.Contains(n)),
                string.Join(", ", what),
                keys.ToImmutable()
            )
        );
    }
}
