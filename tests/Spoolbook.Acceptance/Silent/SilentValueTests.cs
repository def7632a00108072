using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Spoolbook.Entry;
using Spoolbook.Importing;
using Spoolbook.Reading.Files;
using Xunit.Abstractions;

namespace Spoolbook.Acceptance.Silent;

/// <summary>
/// Changes every value of every record once in each way that a tired hand does, and sees who notices: a finding that the
/// unchanged record does not bring, or a "not looked at" that names the place. What nobody notices is a silent mistake.
/// </summary>
public sealed class SilentValueTests(ITestOutputHelper output)
{
    // Of each key and slip in a production, evenly over all its places: a hundred takes of one kind say what ten do.
    const int MostOfOneKind = 12;

    const int FewestNoticed = 60;

    static string Reasons => Path.Combine(Repository.Root, "tests/Spoolbook.Acceptance/Silent/reasons.txt");

    static string Table => Path.Combine(Repository.Root, "tests/Spoolbook.Acceptance/Silent/SILENT.md");

    [EveryValueFact]
    public void Every_value_that_is_changed_is_noticed_or_has_its_reason()
    {
        var outcomes = new ConcurrentBag<(string Key, string Slip, Outcome Outcome, string By)>();
        string[] folders = [Repository.Sample, .. TestFolders.NamesIn(TestFolders.Clean).Select(n => Path.Combine(TestFolders.Clean, n))];
        foreach (var folder in folders)
        {
            var files = new FolderFiles(TestFolders.ProductionIn(folder));
            var usual = Notices.Of(Pipeline.Run(files).Found);
            var values = files.Names.SelectMany(n => WrittenValues.Of(n, files.Open(n).Text ?? "")).ToList();
            var texts = files.Names.ToDictionary(n => n, n => files.Open(n).Text ?? "", StringComparer.Ordinal);
            var changes =
                from key in values.GroupBy(v => v.Key, StringComparer.Ordinal)
                let all = key.ToList()
                from change in all.SelectMany(
                    (v, i) =>
                        ValueSlips
                            .Of(v, texts[v.File], [.. all.Skip(i + 1).Concat(all.Take(i)).Select(o => o.Text)])
                            .Select(s => (Value: v, s.Slip, s.Text))
                )
                group change by (key.Key, change.Slip) into kind
                let step = 1 + ((kind.Count() - 1) / MostOfOneKind)
                from change in kind.Where((_, i) => i % step == 0)
                select change;
            Parallel.ForEach(changes.ToList(), change =>
            {
                var changed = new ChangedFiles(files, [new ChangedFile(change.Value.File, texts[change.Value.File], change.Text)]);
                var (outcome, by) = usual.Against(Notices.Of(Pipeline.Run(changed).Found));
                outcomes.Add((change.Value.Key, change.Slip, outcome, by));
            });
        }

        Write([.. outcomes]);
    }

    void Write(ImmutableArray<(string Key, string Slip, Outcome Outcome, string By)> outcomes)
    {
        var reasons = File.ReadLines(Reasons)
            .Where(l => l.Contains('=', StringComparison.Ordinal) && !l.StartsWith('#'))
            .ToDictionary(
                l => l[..l.IndexOf('=', StringComparison.Ordinal)].Trim(),
                l => l[(l.IndexOf('=', StringComparison.Ordinal) + 1)..].Trim()
            );
        var page = new StringBuilder();
        page.Append(
            "# Who notices a wrong value\n\nWritten by `scripts/silent-values`: each value of the sample and of the clean productions, "
        );
        page.Append("changed in each way that a tired hand does. Noticed is a finding that the record did not bring before, or a ");
        page.Append("\"not looked at\" that names the place.\n\n");
        var noticed = outcomes.Count(o => o.Outcome != Outcome.Silent);
        page.Append(
            CultureInfo.InvariantCulture,
            $"**{noticed} of {outcomes.Length} changes were noticed: {Share(noticed, outcomes.Length)} %.**\n\n## By kind of slip\n\n"
        );
        page.Append("| slip | changes | noticed |\n|---|---:|---:|\n");
        foreach (var slip in outcomes.GroupBy(o => o.Slip).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {slip.Key} | {slip.Count()} | {Share(slip.Count(o => o.Outcome != Outcome.Silent), slip.Count())} % |\n"
            );
        }

        page.Append(
            "\n## By key\n\n| key | changes | finding | not looked at | noticed | by, or why not |\n|---|---:|---:|---:|---:|---|\n"
        );
        var without = new List<string>();
        foreach (var key in outcomes.GroupBy(o => o.Key).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            var (all, found, open) = (key.Count(), key.Count(o => o.Outcome == Outcome.Finding), key.Count(o => o.Outcome == Outcome.Open));
            var share = Share(found + open, all);
            var by = string.Join(
                ", ",
                key.Where(o => o.By.Length > 0)
                    .GroupBy(o => o.By)
                    .OrderByDescending(g => g.Count())
                    .ThenBy(g => g.Key, StringComparer.Ordinal)
                    .Take(4)
                    .Select(g => $"`{g.Key}`")
            );
            var reason =
                share < FewestNoticed
                    ? reasons.GetValueOrDefault(key.Key, reasons.GetValueOrDefault("*." + key.Key.Split('.')[^1], ""))
                    : "";
            if (share < FewestNoticed && reason.Length == 0)
            {
                without.Add(key.Key);
            }

            var words = string.Join("; ", new[] { by, reason }.Where(t => t.Length > 0));
            page.Append(CultureInfo.InvariantCulture, $"| `{key.Key}` | {all} | {found} | {open} | {share} % | {words} |\n");
        }

        File.WriteAllText(Table, page.ToString());
        output.WriteLine($"{noticed} of {outcomes.Length} noticed");
        Assert.True(without.Count == 0, $"Under {FewestNoticed} % and without a reason in reasons.txt: {string.Join(", ", without)}");
    }

    static int Share(int part, int all) => all == 0 ? 100 : (int)Math.Floor(100.0 * part / all);
}
