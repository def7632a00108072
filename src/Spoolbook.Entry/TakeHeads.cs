using System.Collections.Immutable;
using System.Text;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Entry;

/// <summary>
/// The heads and names of the Takes sheet in every language that Spoolbook prints in. Messages use the first language.
/// </summary>
public sealed class TakeHeads
{
    readonly Dictionary<string, TakeColumn> _columns = new(StringComparer.Ordinal);
    readonly Dictionary<TakeColumn, string> _heads = [];
    readonly List<string> _known = [];
    readonly HashSet<string> _sheets = new(StringComparer.Ordinal);

    /// <param name="sheets">The names of the sheet; messages use the first.</param>
    /// <param name="heads">The heads; messages use the first of each column.</param>
    /// <param name="marks">The sheet's codes for a take's mark.</param>
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

    /// <summary>The sheet's codes for a take's mark.</summary>
    public ImmutableArray<(Mark Mark, string Code)> Marks { get; }

    public string Sheet { get; } = null!;

    /// <summary>The columns that match a row to a take of a roll.</summary>
    public static ImmutableArray<TakeColumn> Needed { get; } = [TakeColumn.Roll, TakeColumn.Scene, TakeColumn.Take];

    public string Name(TakeColumn column) => _heads[column];

    public bool IsSheet(string name) => _sheets.Contains(Plain(name));

    /// <summary>The column under a head; null for a head that is the user's own.</summary>
    public TakeColumn? Column(string head) => _columns.TryGetValue(Plain(head), out var column) ? column : null;

    /// <summary>The column that a misspelt head most likely means.</summary>
    public TakeColumn? Nearest(string head) => Likeness.Nearest(head, _known) is { } near ? Column(near) : null;

    // Ignores case, blanks and line ends in a head.
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
