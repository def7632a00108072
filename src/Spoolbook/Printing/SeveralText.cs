using System.Text;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Printing;

/// <summary>For people: the findings of each production with its folder before the file, and one line that sums it up.</summary>
/// <param name="makesPapers">Whether papers are made, and not only findings.</param>
/// <param name="loudness">How much is said; a quiet one says nothing of a production without errors.</param>
internal sealed class SeveralText(bool makesPapers, Loudness loudness) : ISeveralForm
{
    public string Head => "";

    public string Between => "";

    public string Part(string name, CheckedProduction found, ProductionDone done, CommandEnvironment around)
    {
        var folder =
            done.IsSchool ? name[..(name.LastIndexOf('/') + 1)]
            : name == "." ? ""
            : name + "/";
        var ink = new Ink(around.Colour);
        var lines = new FindingText(ink, around, (file, line) => found.Sources.Line(Unplaced(file), line));
        var text = new StringBuilder();
        var isQuiet = loudness == Loudness.Quiet;
        foreach (var line in found.Findings.Where(f => !isQuiet || f.Level == Level.Error).Select(Placed).SelectMany(lines.Lines))
        {
            text.Append(line).Append('\n');
        }

        if (isQuiet && done is { Errors: 0, IsFaulty: false })
        {
            return "";
        }

        foreach (var line in WrappedText.On(around, $"{ink.Bold(Plain.Escaped(name))}: {Line(done)}", 2))
        {
            text.Append(line).Append('\n');
        }

        return text.ToString();

        // A search through what is printed finds the file, and an editor opens it from here.
        Finding Placed(Finding finding) =>
            finding with
            {
                Place = At(finding.Place),
                Others = [.. finding.Others.Select(other => other with { Place = At(other.Place) })],
            };

        Place At(Place place) => place with { File = FolderPath.Joined(folder, place.File) };

        string Unplaced(string file) => found.Sources.Names.FirstOrDefault(own => FolderPath.Joined(folder, own) == file) ?? file;
    }

    public string Tail(SeveralSum sum, CommandEnvironment around)
    {
        if (loudness == Loudness.Quiet && sum is { Errors: 0, Faulty.IsEmpty: true })
        {
            return "";
        }

        var text = new StringBuilder();
        if (!makesPapers && loudness != Loudness.Quiet && sum.NotLookedAt.Count > 0)
        {
            // What is noted least, first: there a word to all crews helps most.
            var open = sum.NotLookedAt.OrderByDescending(q => q.Value).Select(q => $"{q.Key} in {q.Value}");
            Say(
                new Ink(around.Colour).Dim(
                    $"Not looked at, because it is not noted (`spoolbook check PRODUCTION` says where): {string.Join(", ", open)}."
                )
            );
        }

        string[] levels = [In(sum.Errors, "error", sum.WithErrors.Length), In(sum.Warnings, "warning", null), In(sum.Notes, "note", null)];
        var papers = makesPapers ? $"; {Plain.Count(sum.Papers, "paper")}, {sum.ChangedPapers} new or changed" : "";
        Say($"{Plain.Count(sum.Done, "production")}: {string.Join(", ", levels)}{papers}.");
        if (!sum.WithErrors.IsEmpty)
        {
            Say($"{(makesPapers ? "Mend the errors in" : "Errors in")} {Names(sum.WithErrors)}.");
        }

        if (!sum.Faulty.IsEmpty)
        {
            Say($"Not finished: {Names(sum.Faulty)}; the error output says why.");
        }

        return text.ToString();

        void Say(string line)
        {
            foreach (var part in WrappedText.On(around, line, 2))
            {
                text.Append(part).Append('\n');
            }
        }
    }

    static string In(int count, string what, int? productions) =>
        count == 0 ? $"no {what}s"
        : productions is { } some ? $"{Plain.Count(count, what)} in {some}"
        : Plain.Count(count, what);

    static string Names(IEnumerable<string> names) => string.Join(", ", names.Select(Plain.Escaped));

    string Line(ProductionDone done)
    {
        (int Count, string What)[] levels = [(done.Errors, "error"), (done.Warnings, "warning"), (done.Notes, "note")];
        var parts = levels.Where(l => l.Count > 0).Select(l => Plain.Count(l.Count, l.What)).ToList();
        if (parts.Count == 0 && !done.IsFaulty)
        {
            parts.Add("no findings");
        }

        if (done.IsFaulty)
        {
            parts.Add("not finished");
        }
        else if (makesPapers && !(done.IsSchool && done.Papers is null))
        {
            parts.Add(
                done.Papers is not { } papers ? "no papers"
                : done.ChangedPapers == 0 ? $"{Plain.Count(papers, "paper")} as before"
                : Plain.Count(papers, "paper")
            );
        }

        return string.Join(", ", parts);
    }
}
