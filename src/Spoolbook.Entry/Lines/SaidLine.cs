using System.Collections.Immutable;
using Spoolbook.Reading.Editing;

namespace Spoolbook.Entry.Lines;

/// <summary>What a line says, ready to write.</summary>
/// <param name="Number">The entry's number, <c>K3-12</c>; null for a line without one.</param>
/// <param name="Digest">Four digits of the line's text; null for a line without a number.</param>
/// <param name="Roll">The roll it is about; null only for a day, and where the roll is not known.</param>
/// <param name="Keys">The keys of the entry with their YAML values, those kept from before included.</param>
/// <param name="NotNoted">The keys it says were not noted: <c>lens -</c>.</param>
/// <param name="Target">The entry it amends or strikes; null for any other verb, and where the number says it.</param>
public sealed record SaidLine(
    LineVerb Verb,
    string? Number,
    string? Digest,
    string? Roll,
    ImmutableArray<KeyValue> Keys,
    ImmutableArray<string> NotNoted,
    LineTarget? Target,
    LineText Text
)
{
    /// <summary>The keys that the line leaves out and that come from the take before, the kit or the roll.</summary>
    public ImmutableArray<string> TakenOver { get; init; } = [];

    /// <summary>The date of a <c>day</c>; null for any other verb.</summary>
    public DateOnly? Day { get; init; }

    /// <summary>The key by which an entry knows its line again; null for a line without a number.</summary>
    public KeyValue? LineKey => Number is null ? null : new KeyValue("line", $"{Number}/{Digest}");

    /// <summary>The values of a key; empty where the line does not have it.</summary>
    public ImmutableArray<string> this[string key]
    {
        get
        {
            foreach (var said in Keys)
            {
                if (said.Key == key)
                {
                    return said.Values;
                }
            }

            return [];
        }
    }
}
