namespace Spoolbook.Checks.Running;

/// <summary>Which of a list of names somebody may have meant.</summary>
static class Likeness
{
    /// <summary>The name that takes the fewest changed, missing or added letters; null where it would take more than a third of them.</summary>
    public static string? Nearest(string written, IEnumerable<string> names)
    {
        var best = (from name in names
                    let distance = Distance(written, name)
                    where distance * 3 <= Math.Max(written.Length, name.Length)
                    orderby distance, name
                    select name).FirstOrDefault();
        return best ?? names.Where(n => n.EndsWith("/" + written, StringComparison.Ordinal)).Order(StringComparer.Ordinal).FirstOrDefault();
    }

    // A row of the usual table at a time: row[j] is the distance from what was read of a to the first j letters of b.
    static int Distance(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var change = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(change, 1 + Math.Min(row[j], row[j - 1]));
            }
        }

        return row[b.Length];
    }
}
