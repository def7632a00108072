using System.Globalization;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Readers;

/// <summary>
/// A number left out in the count of rolls: R1, R2, R4, or R2, R3, R4. Reported only where the count has no other gap, no roll with
/// another letter has the number, and nothing else names the missing roll: a finding about that name says more.
/// </summary>
static class RollNumbers
{
    const int FewestRolls = 3;
    const int MostDigits = 6;

    public static void Check(Production production, FindingList findings)
    {
        if (production.Unread.Contains(Part.Rolls))
        {
            return;
        }

        var rolls = production.Rolls.Select(r => (Roll: r, Name: Split(r.Name.Value))).ToArray();
        var numbers = rolls.Select(r => r.Name.Number).ToHashSet();
        var named = NamesOf(production).ToHashSet(StringComparer.Ordinal);
        foreach (var group in rolls.Where(r => r.Name.Number >= 0).GroupBy(r => r.Name.Letters, StringComparer.Ordinal))
        {
            var counted = group.DistinctBy(r => r.Name.Number).OrderBy(r => r.Name.Number).ToArray();
            var steps = counted.Zip(counted.Skip(1)).Where(s => s.Second.Name.Number != s.First.Name.Number + 1).ToArray();
            if (group.Count() < FewestRolls || counted.Length < group.Count())
            {
                continue;
            }

            if (steps is [] && counted[0].Name.Number == 2)
            {
                Report(1, null, counted[0].Roll, counted[0].Name.Digits);
            }
            else if (steps is [var (before, after)] && after.Name.Number == before.Name.Number + 2)
            {
                Report(before.Name.Number + 1, before.Roll, after.Roll, before.Name.Digits);
            }

            void Report(int number, Roll? before, Roll after, int digits)
            {
                var missing = group.Key + number.ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0');
                if (!numbers.Contains(number) && !named.Contains(missing))
                {
                    findings.Add(Skipped(missing, before, after));
                }
            }
        }
    }

    static Finding Skipped(string missing, Roll? before, Roll after) =>
        new(
            SheetChecks.NumberSkipped,
            Level.Warning,
            before is null
                ? Sentence.Of("roll/number-skipped.message.first", ("missing", missing), ("after", after.Name.Value))
                : Sentence.Of(
                    "roll/number-skipped.message",
                    ("missing", missing),
                    ("before", before.Name.Value),
                    ("after", after.Name.Value)
                ),
            after.Name.Place
        )
        {
            Roll = missing,
            Others = before is null ? [] : [new Related(before.Name.Place, Sentence.Of("roll/number-skipped.other.before"))],
            Advice = Sentence.Of("roll/number-skipped.help", ("missing", missing)),
        };

    /// <summary>The names of rolls in other records.</summary>
    static IEnumerable<string> NamesOf(Production production) =>
        production
            .Rolls.Select(r => r.ShortEndOf)
            .Concat(production.StockLog.Select(e => e.ShortEndOf))
            .Concat((production.Lab?.Consignments ?? []).SelectMany(c => c.Rolls))
            .OfType<Located<string>>()
            .Select(name => name.Value);

    /// <summary>What comes before the number at the end of a name, and the number; -1 where there is none.</summary>
    static (string Letters, int Number, int Digits) Split(string name)
    {
        var letters = name.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        var digits = name[letters.Length..];
        return digits.Length is 0 or > MostDigits
            ? (name, -1, 0)
            : (letters, int.Parse(digits, CultureInfo.InvariantCulture), digits.Length);
    }
}
