using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
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

    // Left out, they mean what the stock, the lab or the take before says.
    static readonly HashSet<string> _withDefault = ["lab.process", "lab.push", "lab.send", "lab.services", "take.speed", "take.from"];

    static string Reasons => Path.Combine(Repository.Root, "tests/Spoolbook.Acceptance/Silent/reasons.txt");

    static string List => Path.Combine(Repository.Root, "artifacts/silent-changes.txt");

    static string Table => Path.Combine(Repository.Root, "tests/Spoolbook.Acceptance/Silent/SILENT.md");

    [EveryValueFact]
    public void Every_value_that_is_changed_is_noticed_or_has_its_reason()
    {
        var only = Environment.GetEnvironmentVariable("SPOOLBOOK_KEYS") is { Length: > 0 } keys ? new Regex(keys) : null;
        var seen = new ConcurrentBag<SeenSlip>();
        string[] folders = [Repository.Sample, .. TestFolders.NamesIn(TestFolders.Clean).Select(n => Path.Combine(TestFolders.Clean, n))];
        foreach (var folder in folders)
        {
            var files = new FolderFiles(TestFolders.ProductionIn(folder));
            var found = Pipeline.Run(files).Found;
            var (usual, figures) = (Notices.Of(found), PrintedFigures.Of(found));
            var values = files.Names.SelectMany(n => WrittenValues.Of(n, files.Open(n).Text ?? "")).ToList();
            var texts = files.Names.ToDictionary(n => n, n => files.Open(n).Text ?? "", StringComparer.Ordinal);
            var changes =
                from key in values.GroupBy(v => v.Key, StringComparer.Ordinal)
                where only?.IsMatch(key.Key) != false
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
                var after = Pipeline.Run(changed).Found;
                var (outcome, by) = usual.Against(Notices.Of(after));
                seen.Add(
                    new SeenSlip(change.Value.Key, change.Slip, outcome, by)
                    {
                        IsSame =
                            change.Slip is "deleted" or "another's"
                            && (_withDefault.Contains(change.Value.Key) || IsBareWind(change.Value))
                            && outcome != Outcome.Finding
                            && PrintedFigures.Of(after) == figures,
                        Described = Described(folder, change.Value, change.Slip, texts[change.Value.File], change.Text),
                    }
                );
            });
        }

        var outcomes = seen.Where(s => !s.IsSame).ToImmutableArray();
        Directory.CreateDirectory(Path.GetDirectoryName(List)!);
        File.WriteAllLines(List, outcomes.Where(o => o.Outcome == Outcome.Silent).Select(o => o.Described).Order(StringComparer.Ordinal));
        output.WriteLine($"{outcomes.Count(o => o.Outcome != Outcome.Silent)} of {outcomes.Length} noticed");
        if (only is null)
        {
            Write(outcomes, seen.Count - outcomes.Length);
        }
    }

    // `wind: full` and a bare `wind:` are the same winding.
    static bool IsBareWind(WrittenValue value) => !value.IsEntry && value is { Key: "log.wind", Text: "full" or "" };

    // The key first, so that the list is in the order of the table; then where, and the lines that the slip changed.
    static string Described(string folder, WrittenValue value, string slip, string before, string after)
    {
        var (was, now) = (before.Split('\n'), after.Split('\n'));
        var line = was.Zip(now).TakeWhile(l => l.First == l.Second).Count();
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{value.Key}\t{slip}\t{Path.GetFileName(folder)}/{value.File}:{line + 1}\t{At(was).Trim()}\t{At(now).Trim()}"
        );

        string At(string[] lines) => line < lines.Length ? lines[line] : "";
    }

    void Write(ImmutableArray<SeenSlip> outcomes, int dropped)
    {
        var reasons = File.ReadLines(Reasons).Select(KeyReason.Of).OfType<KeyReason>().ToDictionary(r => r.Key, StringComparer.Ordinal);
        KeyReason? ReasonOf(string key) => reasons.GetValueOrDefault(key) ?? reasons.GetValueOrDefault("*." + key.Split('.')[^1]);

        var page = new StringBuilder();
        var noticed = outcomes.Count(o => o.Outcome != Outcome.Silent);
        var twice = outcomes.Where(o => ReasonOf(o.Key)?.IsSaidOnce != true).ToList();
        var noticedTwice = twice.Count(o => o.Outcome != Outcome.Silent);
        var (all, contradicted) = (Share(noticed, outcomes.Length), Share(noticedTwice, twice.Count));
        var defaults = string.Join(", ", _withDefault.Order(StringComparer.Ordinal).Select(k => $"`{k}`"));
        page.Append(
            CultureInfo.InvariantCulture,
            $"""
            # Who notices a wrong value

            Written by `scripts/silent-values`: each value of the sample and of the clean productions, changed in each way that a
            tired hand does. Noticed is a finding that the record did not bring before, or a "not looked at" that names the place.

            **All keys: {noticed} of {outcomes.Length} changes were noticed, {all} %.
            Keys that something else in the record can contradict: {noticedTwice} of {twice.Count}, {contradicted} %.**

            A key is *said once* where nothing else in the record says what it says: free words, names, addresses, serial numbers,
            prices and days that only another house knows, choices. No check can contradict it, only miss it. `reasons.txt` says
            which keys are said once (`~`); the second figure is over all others.

            Not counted are {dropped} slips that are no mistakes. They are of keys that mean something where they are left out
            ({defaults}):
            deleted, or with another's value, after which the figures (`ledger.json`) and the takes (`takes.csv`) are what they
            were. `push: 0` deleted is still no push. And of `wind: full`, which a bare `wind:` means too, where its word is gone.


            """
        );
        page.Append("## By kind of slip\n\n| slip | changes | noticed |\n|---|---:|---:|\n");
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
            var (changes, found, open) = (
                key.Count(),
                key.Count(o => o.Outcome == Outcome.Finding),
                key.Count(o => o.Outcome == Outcome.Open)
            );
            var share = Share(found + open, changes);
            var by = string.Join(
                ", ",
                key.Where(o => o.By.Length > 0)
                    .GroupBy(o => o.By)
                    .OrderByDescending(g => g.Count())
                    .ThenBy(g => g.Key, StringComparer.Ordinal)
                    .Take(4)
                    .Select(g => $"`{g.Key}`")
            );
            var known = ReasonOf(key.Key);
            var reason =
                known is { IsSaidOnce: true } ? "said once: " + known.Text
                : share < FewestNoticed ? known?.Text ?? ""
                : "";
            if (share < FewestNoticed && reason.Length == 0)
            {
                without.Add(key.Key);
            }

            var words = string.Join("; ", new[] { by, reason }.Where(t => t.Length > 0));
            page.Append(CultureInfo.InvariantCulture, $"| `{key.Key}` | {changes} | {found} | {open} | {share} % | {words} |\n");
        }

        File.WriteAllText(Table, page.ToString());
        Assert.True(without.Count == 0, $"Under {FewestNoticed} % and without a reason in reasons.txt: {string.Join(", ", without)}");
    }

    static int Share(int part, int all) => all == 0 ? 100 : (int)Math.Floor(100.0 * part / all);
}
