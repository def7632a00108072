using System.Globalization;
using System.Text.RegularExpressions;

namespace Spoolbook.Papers.Wording;

/// <summary>Many rolls in few words: consecutive rolls are written as the first and the last.</summary>
internal static partial class RollRuns
{
    // Two names are as short as a range of them.
    const int Fewest = 3;

    /// <summary><c>R01–R04, R06</c> for R01, R02, R03, R04 and R06.</summary>
    public static string Of(IEnumerable<string> rolls)
    {
        var runs = new List<List<string>>();
        foreach (var roll in rolls)
        {
            if (runs.Count > 0 && Next(runs[^1][^1]) == roll)
            {
                runs[^1].Add(roll);
            }
            else
            {
                runs.Add([roll]);
            }
        }

        return string.Join(", ", runs.SelectMany(run => run.Count >= Fewest ? [run[0] + "–" + run[^1]] : run));
    }

    /// <summary>The next name: one more, with as many digits; null where a name does not end in a number.</summary>
    static string? Next(string roll) =>
        Numbered().Match(roll) is { Success: true } match
            ? match.Groups["name"].Value
                + (long.Parse(match.Groups["number"].Value, CultureInfo.InvariantCulture) + 1)
                    .ToString(CultureInfo.InvariantCulture)
                    .PadLeft(match.Groups["number"].Length, '0')
            : null;

    [GeneratedRegex("^(?<name>.*?)(?<number>[0-9]{1,15})$", RegexOptions.Singleline)]
    private static partial Regex Numbered();
}
