using System.Collections.Immutable;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.LabOrders;

/// <summary>
/// What was agreed with the lab for some cans of an order only. An agreement is a free line, so it is about the cans whose
/// rolls it names; where it names none, about those whose process, stock or lot it names.
/// </summary>
/// <param name="Lines">The agreements that name this can and not every can beside it.</param>
/// <param name="IsApart">Whether one of them names its roll, or half of the cans at most.</param>
internal sealed record AgreedOn(ImmutableArray<string> Lines, bool IsApart)
{
    /// <param name="beside">The cans of the same order, this one among them.</param>
    public static AgreedOn Of(RollBook roll, IReadOnlyCollection<RollBook> beside, Production production, PaperFormat format)
    {
        var lines = (production.Lab?.Agreed ?? [])
            .Select(line => line.Value)
            .Where(line => IsAbout(line, roll, production, format))
            .Select(line =>
                (
                    Line: line,
                    NamesIt: NamesRoll(line, roll.Roll),
                    Cans: beside.Count(can => IsAbout(line, can, production, format))
                )
            )
            .Where(about => about.NamesIt || about.Cans < beside.Count)
            .ToList();
        return new([.. lines.Select(about => about.Line)], lines.Exists(about => about.NamesIt || 2 * about.Cans <= beside.Count));
    }

    static bool IsAbout(string line, RollBook roll, Production production, PaperFormat format) =>
        production.Rolls.Any(r => NamesRoll(line, r))
            ? NamesRoll(line, roll.Roll)
            : (roll.LabWork.Process is { } process && NamesProcess(line, process, format))
                || (production.LotOf(roll.Roll) is { } lot && NamesStock(line, lot));

    // A roll called 1 or A is in every second sentence.
    static bool NamesRoll(string line, Roll roll) =>
        roll.Name.Value is { Length: > 1 } name && name.Any(char.IsLetter) && Holds(line, name, StringComparison.Ordinal);

    // Whoever writes of reversal means every process of that kind, and a German one writes it into longer words.
    static bool NamesProcess(string line, string process, PaperFormat format) =>
        new[] { process, format.Process(process), format.ShortProcess(process) }.Any(name =>
            Holds(line, name, StringComparison.OrdinalIgnoreCase)
        )
        || (
            ProcessKind.IsReversal(process)
            && (
                line.Contains("reversal", StringComparison.OrdinalIgnoreCase)
                || line.Contains(format.Words["agreed-reversal"], StringComparison.OrdinalIgnoreCase)
            )
        );

    static bool NamesStock(string line, StockLot lot) =>
        Holds(line, lot.Stock.Value, StringComparison.OrdinalIgnoreCase)
        || (lot.Name.Value.Length > 1 && lot.Name.Value.Any(char.IsDigit) && Holds(line, lot.Name.Value, StringComparison.Ordinal));

    // As a word of its own: R1 is not in R12.
    static bool Holds(string line, string name, StringComparison comparison)
    {
        for (var at = line.IndexOf(name, comparison); at >= 0; at = line.IndexOf(name, at + 1, comparison))
        {
            var end = at + name.Length;
            if ((at == 0 || !char.IsLetterOrDigit(line[at - 1])) && (end >= line.Length || !char.IsLetterOrDigit(line[end])))
            {
                return true;
            }
        }

        return false;
    }
}
