using System.Globalization;
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
    static List<(string Roll, string LoadedOn)> RollsIn(string ledger, string code)
    {
        var rolls = new List<(string Roll, string LoadedOn)>();
        try
        {
            using var json = JsonDocument.Parse(ledger);
            var root = json.RootElement;
            if (TextOf(root, "production", "code") != code)
            {
                return rolls;
            }

            foreach (var list in (string[])["rolls", PracticeRolls])
            {
                rolls.AddRange(
                    from roll in Under(root, list) is { ValueKind: JsonValueKind.Array } array ? array.EnumerateArray() : default
                    let name = TextOf(roll, "roll")
                    where name is not null
                    select (name, TextOf(roll, "loaded-on") ?? list)
                );
            }
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            // A spoilt ledger proves nothing: the next papers write it anew.
            return [];
        }

        return rolls;
    }

    static string? TextOf(JsonElement from, params ReadOnlySpan<string> path)
    {
        JsonElement? at = from;
        foreach (var name in path)
        {
            at = at is { } here ? Under(here, name) : null;
        }

        return at is { ValueKind: JsonValueKind.String } text ? text.GetString() : null;
    }

    static JsonElement? Under(JsonElement from, string name) =>
        from.ValueKind == JsonValueKind.Object && from.TryGetProperty(name, out var value) ? value : null;

    // The ledger does not say when a practice roll was loaded.
    static string LoadedOn(Roll roll) =>
        roll.IsPractice ? PracticeRolls : roll.Load.On.Value.ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture);
}
