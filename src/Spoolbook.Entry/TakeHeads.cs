using System.Collections.Immutable;
using System.Text;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Entry;

/// <summary>
/// The heads of the Takes sheet in every language that the house prints in, and the names that the sheet has. Messages
/// call things as the first language does.
/// </summary>
public sealed class TakeHeads
{
    readonly Dictionary<string, TakeColumn> _columns = new(StringComparer.Ordinal);
    readonly Dictionary<TakeColumn, string> _heads = [];
    readonly List<string> _known = [];
    readonly HashSet<string> _sheets = new(StringComparer.Ordinal);

    /// <param name="sheets">What the sheet is called; the first is how messages call it.</param>
    /// <param name="heads">The heads; the first of each column is how messages call it.</param>
    /// <param name="marks">How the sheet writes what is said of a take.</param>
    public TakeHeads(
        IEnumerable<string> sheets,
        IEnumerable<(TakeColumn Column, string Head)> heads,
        IEnumerable<(Mark Mark, string Code)> marks
    )
    {
        Marks = [.. marks];
        foreach (var name in sheets)
        {
            Sheet ??= name;
            _sheets.Add(Plain(name));
        }

        foreach (var (column, head) in heads)
        {
            _known.Add(head);
            _heads.TryAdd(column, head);
            _columns.TryAdd(Plain(head), column);
        }
    }

    /// <summary>How the sheet writes what is said of a take.</summary>
    public ImmutableArray<(Mark Mark, string Code)> Marks { get; }

    /// <summary>What messages call the sheet.</summary>
    public string Sheet { get; } = null!;

    /// <summary>What a sheet needs for a row to be a take of a roll.</summary>
    public static ImmutableArray<TakeColumn> Needed { get; } = [TakeColumn.Roll, TakeColumn.Scene, TakeColumn.Take];

    /// <summary>What messages call a column.</summary>
    public string Name(TakeColumn column) => _heads[column];

    /// <summary>Whether a sheet is the one by its name.</summary>
    public bool IsSheet(string name) => _sheets.Contains(Plain(name));

    /// <summary>The column that a head stands over; null for a head of another's own.</summary>
    public TakeColumn? Column(string head) => _columns.TryGetValue(Plain(head), out var column) ? column : null;

    /// <summary>The head that somebody may have meant.</summary>
    public TakeColumn? Nearest(string head) => Likeness.Nearest(head, _known) is { } near ? Column(near) : null;

    // Capital letters, blanks and line ends in a head are of no matter.
    static string Plain(string head)
    {
        var plain = new StringBuilder(head.Length);
        foreach (var c in head.Normalize())
        {
            if (!char.IsWhiteSpace(c))
            {
                plain.Append(char.ToLowerInvariant(c));
            }
        }

        return plain.ToString();
    }
}
