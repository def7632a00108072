using System.Globalization;
using System.Text.RegularExpressions;
using Spoolbook.Checks.Running;
using Spoolbook.Reading.Editing;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Asking;

/// <summary>Asks how a roll is loaded, and makes a line of the answers.</summary>
internal static partial class LoadQuestions
{
    /// <summary>The line, and whether counter and dial are at zero.</summary>
    public static (string Line, bool IsZeroed) Ask(Asker asker, Books books, DateTime now)
    {
        var production = books.Production;
        var before = production.Rolls.Where(r => !r.IsPractice).MaxBy(r => r.Load.On.Value);
        var context = new Context(production);
        var words = new List<string> { "load" };
        Add("", asker.Ask("Roll", NextName(production), answer => NameFault(answer, production)));
        Add("", asker.Ask("Lot and unit, or short end of which roll", NextUnit(books, before), answer => UnitFault(answer, production)));
        if (production.Bodies.Length > 1)
        {
            Add("in", asker.Ask("Body", before?.Body?.Value ?? production.Bodies[0].Name.Value));
        }

        Add("by", asker.Ask("Who loads", before?.Load.By?.Value ?? ""));
        Add("", asker.Ask("When", now.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)));
        Add("", asker.Ask("Light (dark, subdued, bright)", before?.Load.Light?.Value.ToString().ToLowerInvariant() ?? "subdued"));
        Add("head", asker.Ask("Head, run off in loading", before?.Load.Head is { } head ? Written(context.Write(head.Value)) : ""));
        Ready(asker, words);
        var speed = before?.Load.SpeedAfter?.Value.FramesPerSecond.ToShortText(3) ?? "24";
        Add("speed-after", asker.Ask("Speed set after it", speed));
        return (string.Join(' ', words), asker.Agree("Frame counter and dial at zero"));

        void Add(string key, string answer)
        {
            if (answer.Length > 0)
            {
                words.Add(key.Length == 0 ? answer : $"{key} {Quoted(answer)}");
            }
        }
    }

    // Nobody ticks a list that he does not go through: all of it is said in a word, or point by point.
    static void Ready(Asker asker, List<string> words)
    {
        var points = EntryTables.Load.Find("except")!.Words;
        var said = asker.Ask($"Ready list ({string.Join(", ", points)}): all, none, or Enter for each", "", answer =>
            answer is "" or "all" or "none" ? null : "Answer all, none, or nothing."
        );
        var open = said is "" ? points.Where(p => !asker.Agree($"  {p} in order")).ToList() : [];
        words.Add(said == "none" ? "ready none" : "ready all");
        if (open.Count > 0)
        {
            words.Add("except " + string.Join(',', open));
        }
    }

    // R07 after R06: the last number in the name goes up.
    static string NextName(Production production)
    {
        if (production.Rolls.LastOrDefault(r => !r.IsPractice)?.Name.Value is not { } last)
        {
            return "R01";
        }

        if (LastNumber().Match(last) is not { Success: true } match)
        {
            return "";
        }

        var number = long.Parse(match.Value, CultureInfo.InvariantCulture) + 1;
        return last[..match.Index] + number.ToString(CultureInfo.InvariantCulture).PadLeft(match.Length, '0');
    }

    // The next can of the lot in use, or of another.
    static string NextUnit(Books books, Roll? before)
    {
        var lot = before is null ? null : books.Production.LotOf(before);
        var next = books.Stock.Counted.OrderByDescending(l => ReferenceEquals(l.Lot, lot)).FirstOrDefault(l => !l.Sealed.IsEmpty);
        return next is not null ? string.Create(CultureInfo.InvariantCulture, $"{next.Lot.Name.Value}/{next.Sealed[0]}")
            : books.Stock.ShortEnds.FirstOrDefault(e => e.OnHand.Frames > 0) is { } end ? $"short end of {end.Parent.Name.Value}"
            : "";
    }

    static string? NameFault(string name, Production production) =>
        name.Length == 0 ? "Give the roll a name, as on its can."
        : production.RollNamed(name) is not null ? $"There is a roll {name} already."
        : null;

    static string? UnitFault(string answer, Production production) =>
        answer.StartsWith("short end of ", StringComparison.Ordinal) ? null
        : answer.LastIndexOf('/') is > 0 and var at && production.Lots.Any(l => l.Name.Value == answer[..at]) ? null
        : $"Write lot and unit, as {production.Lots.FirstOrDefault()?.Name.Value ?? "N250-A"}/1, or short end of R02.";

    /// <summary>A length without the blank before its unit.</summary>
    internal static string Written(string length) => length.Replace(" ", "", StringComparison.Ordinal);

    /// <summary>An answer as one word of a line.</summary>
    internal static string Quoted(string answer) => answer.Contains(' ', StringComparison.Ordinal) ? $"\"{answer}\"" : answer;

    [GeneratedRegex("[0-9]{1,9}(?=[^0-9]*$)")]
    private static partial Regex LastNumber();
}
