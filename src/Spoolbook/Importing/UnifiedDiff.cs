using System.Globalization;

namespace Spoolbook.Importing;

/// <summary>The difference of two texts in the form that patch programs read (POSIX diff -u).</summary>
internal static class UnifiedDiff
{
    const int Around = 3;

    /// <summary>The lines, without line ends; none where the texts are the same.</summary>
    public static IEnumerable<string> Write(string name, string before, string after)
    {
        var (a, b) = (Lines(before), Lines(after));
        var steps = Steps(a, b);
        if (steps.All(s => s.Kind == ' '))
        {
            yield break;
        }

        yield return $"--- a/{name}";
        yield return $"+++ b/{name}";
        foreach (var (from, to) in Hunks(steps))
        {
            var hunk = steps[from..to];
            var (olds, news) = (hunk.Count(s => s.Kind != '+'), hunk.Count(s => s.Kind != '-'));
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"@@ -{Range(steps, from, '+', olds)} +{Range(steps, from, '-', news)} @@"
            );
            foreach (var (kind, line) in hunk)
            {
                yield return kind + (line.EndsWith('\n') ? line[..^1] : line);
                if (!line.EndsWith('\n'))
                {
                    yield return "\\ No newline at end of file";
                }
            }
        }
    }

    static string Range(List<(char Kind, string Line)> steps, int from, char without, int count)
    {
        var before = steps.Take(from).Count(s => s.Kind != without);
        return string.Create(CultureInfo.InvariantCulture, $"{(count == 0 ? before : before + 1)}{(count == 1 ? "" : $",{count}")}");
    }

    static IEnumerable<(int From, int To)> Hunks(List<(char Kind, string Line)> steps)
    {
        var changed = Enumerable.Range(0, steps.Count).Where(i => steps[i].Kind != ' ').ToList();
        for (var i = 0; i < changed.Count;)
        {
            var last = i;
            while (last + 1 < changed.Count && changed[last + 1] - changed[last] <= 2 * Around)
            {
                last++;
            }

            yield return (Math.Max(0, changed[i] - Around), Math.Min(steps.Count, changed[last] + Around + 1));
            i = last + 1;
        }
    }

    // Compares only from the first difference to the last: an import changes little.
    static List<(char Kind, string Line)> Steps(List<string> a, List<string> b)
    {
        var head = 0;
        while (head < a.Count && head < b.Count && a[head] == b[head])
        {
            head++;
        }

        var tail = 0;
        while (tail < a.Count - head && tail < b.Count - head && a[^(tail + 1)] == b[^(tail + 1)])
        {
            tail++;
        }

        var steps = a.Take(head).Select(l => (' ', l)).ToList();
        steps.AddRange(Middle(a[head..^tail], b[head..^tail]));
        steps.AddRange(a[^tail..].Select(l => (' ', l)));
        return steps;
    }

    // Myers' greedy algorithm: the time grows with the lines times the differences.
    static List<(char Kind, string Line)> Middle(List<string> a, List<string> b)
    {
        var most = a.Count + b.Count;
        var furthest = new int[(2 * most) + 2];
        var trace = new List<int[]>();
        for (var d = 0; d <= most; d++)
        {
            trace.Add([.. furthest[(most - d - 1 < 0 ? 0 : most - d - 1)..Math.Min(furthest.Length, most + d + 2)]]);
            for (var k = -d; k <= d; k += 2)
            {
                var x =
                    k == -d || (k != d && furthest[most + k - 1] < furthest[most + k + 1])
                        ? furthest[most + k + 1]
                        : furthest[most + k - 1] + 1;
                while (x < a.Count && x - k < b.Count && a[x] == b[x - k])
                {
                    x++;
                }

                furthest[most + k] = x;
                if (x >= a.Count && x - k >= b.Count)
                {
                    return Back(a, b, trace, most);
                }
            }
        }

        return [];
    }

    static List<(char Kind, string Line)> Back(List<string> a, List<string> b, List<int[]> trace, int most)
    {
        var steps = new List<(char Kind, string Line)>();
        var (x, y) = (a.Count, b.Count);
        for (var d = trace.Count - 1; d >= 0; d--)
        {
            var offset = most - d - 1 < 0 ? 0 : most - d - 1;
            int At(int k) => trace[d][most + k - offset];
            var k = x - y;
            var down = d > 0 && (k == -d || (k != d && At(k - 1) < At(k + 1)));
            var fromK = down ? k + 1 : k - 1;
            var fromX = d == 0 ? 0 : At(fromK);
            var fromY = d == 0 ? 0 : fromX - fromK;
            while (x > fromX && y > fromY && (d == 0 || x > fromX + (down ? 0 : 1) || y > fromY + (down ? 1 : 0)) && a[x - 1] == b[y - 1])
            {
                steps.Add((' ', a[--x]));
                y--;
            }

            if (d > 0)
            {
                steps.Add(down ? ('+', b[--y]) : ('-', a[--x]));
            }
        }

        steps.Reverse();
        return steps;
    }

    static List<string> Lines(string text)
    {
        var lines = new List<string>();
        for (var at = 0; at < text.Length;)
        {
            var end = text.IndexOf('\n', at);
            end = end < 0 ? text.Length : end + 1;
            lines.Add(text[at..end]);
            at = end;
        }

        return lines;
    }
}
