using System.Globalization;
using System.Text;
using System.Text.Json;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>
/// Rolls that have papers and are no longer in the production. If a roll without papers was loaded at the very minute of one that is
/// missing, the roll was only renamed.
/// </summary>
static class GoneRolls
{
    const string PracticeRolls = "practice-rolls";

    /// <summary>The production, its rolls marked as unread where one is gone.</summary>
    public static Production? Check(IProductionFiles files, Production? production, FindingList findings)
    {
        // While the file of a roll cannot be read, the missing roll may be in it.
        if (production is null || production.Unread.Contains(Part.Rolls) || files.Ledger is not { } ledger)
        {
            return production;
        }

        var made = RollsIn(ledger, production.Code.Value);
        var names = production.Rolls.Select(r => r.Name.Value).ToHashSet(StringComparer.Ordinal);
        var printed = made.Select(m => m.Roll).ToHashSet(StringComparer.Ordinal);
        var renamed = production.Rolls.Where(r => !printed.Contains(r.Name.Value)).Select(LoadedOn).ToHashSet();
        var gone = made.Where(m => !names.Contains(m.Roll) && !renamed.Contains(m.LoadedOn)).ToArray();
        foreach (var (roll, _) in gone)
        {
            findings.Add(
                new Finding(
                    SheetChecks.RollGone,
                    Level.Error,
                    Sentence.Of("roll/gone.message", ("roll", Quote.Short(roll))),
                    production.Code.Place
                )
                {
                    Roll = roll,
                    Advice = Sentence.Of("roll/gone.help", ("roll", Quote.Short(roll)), ("ledger", SheetNames.Ledger)),
                }
            );
        }

        return gone.Length == 0 ? production : production with { Unread = [.. production.Unread.Add(Part.Rolls).Order()] };
    }

    /// <summary>The rolls in a ledger of this production; none where the ledger is another's or cannot be read.</summary>
    static List<(string Roll, string LoadedOn)> RollsIn(byte[] ledger, string code)
    {
        var rolls = new List<(string Roll, string LoadedOn)>();
        string? production = null;
        try
        {
            // Read past, not into a tree: all the papers' figures are in it.
            var marked = ledger.AsSpan().StartsWith(Encoding.UTF8.Preamble);
            var json = new Utf8JsonReader(ledger.AsSpan(marked ? Encoding.UTF8.Preamble.Length : 0));
            json.Read();
            while (NextIn(ref json) is { } part)
            {
                if (part is "production" && json.TokenType == JsonTokenType.StartObject)
                {
                    production = TextsIn(ref json).Code;
                }
                else if (part is "rolls" or PracticeRolls && json.TokenType == JsonTokenType.StartArray)
                {
                    while (json.Read() && json.TokenType == JsonTokenType.StartObject)
                    {
                        if (TextsIn(ref json) is { Roll: { } name, LoadedOn: var on })
                        {
                            rolls.Add((name, on ?? part));
                        }
                    }
                }
                else
                {
                    json.Skip();
                }
            }
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            // A spoilt ledger proves nothing: the next papers write it anew.
            return [];
        }

        return production == code ? rolls : [];
    }

    // The name of the next value in a map, which is read then; null at the end of the map.
    static string? NextIn(ref Utf8JsonReader map)
    {
        if (!map.Read() || map.TokenType != JsonTokenType.PropertyName)
        {
            return null;
        }

        var name = map.GetString();
        map.Read();
        return name;
    }

    static (string? Code, string? Roll, string? LoadedOn) TextsIn(ref Utf8JsonReader map)
    {
        var (code, roll, on) = ((string?)null, (string?)null, (string?)null);
        while (NextIn(ref map) is { } name)
        {
            var text = map.TokenType == JsonTokenType.String ? map.GetString() : null;
            map.Skip();
            (code, roll, on) = name switch
            {
                "code" => (text, roll, on),
                "roll" => (code, text, on),
                "loaded-on" => (code, roll, text),
                _ => (code, roll, on),
            };
        }

        return (code, roll, on);
    }

    // The ledger does not say when a practice roll was loaded.
    static string LoadedOn(Roll roll) =>
        roll.IsPractice ? PracticeRolls : roll.Load.On.Value.ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture);
}
