using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Spoolbook.Checks;
using Spoolbook.Checks.Unjudged;
using Spoolbook.Digests;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Printing;

/// <summary>
/// Findings as SARIF 2.1.0 (OASIS standard), which editors and code hosts read: rules with their pages, places in
/// UTF-16 characters, related places, and waived findings as suppressed.
/// </summary>
internal sealed class FindingSarif
{
    const string Schema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    // The standard's examples use this name for the root of relative paths.
    const string Base = "%SRCROOT%";

    // Where something is missing everywhere, the first places say enough.
    const int MostPlaces = 10;

    readonly CheckedProduction _found;
    readonly SarifPaths _paths;
    readonly ImmutableArray<string> _rules;

    FindingSarif(CheckedProduction found, SarifPaths paths)
    {
        (_found, _paths) = (found, paths);
        _rules =
        [
            .. found
                .Findings.Concat(found.Waived.Select(w => w.Finding))
                .Select(f => f.Check)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
            .. found.NotLookedAt.Length > 0 ? [Questions.Topic] : (string[])[],
        ];
    }

    public static string Write(CheckedProduction found, SarifPaths paths) => JsonText.Object(new FindingSarif(found, paths).Log);

    /// <summary>What is before the runs of several productions.</summary>
    public static string Head => $"{{\n  \"$schema\": \"{Schema}\",\n  \"version\": \"2.1.0\",\n  \"runs\": [";

    /// <summary>The run of one production of several.</summary>
    /// <param name="name">The production, which tells its run from the others (SARIF 2.1.0, 3.14.3).</param>
    public static string Run(CheckedProduction found, SarifPaths paths, string name) =>
        JsonText.Object(json =>
        {
            json.Object("automationDetails", details => details.WriteString("id", $"{name}/"));
            new FindingSarif(found, paths).Run(json);
        });

    void Log(Utf8JsonWriter json)
    {
        json.WriteString("$schema", Schema);
        json.WriteString("version", "2.1.0");
        json.Objects("runs", [_found], (j, _) => Run(j));
    }

    void Run(Utf8JsonWriter json)
    {
        json.Object("tool", tool => tool.Object("driver", driver =>
            {
                driver.WriteString("name", "Spoolbook");
                driver.WriteString("version", ProgramVersion.Text);
                driver.WriteString("semanticVersion", ProgramVersion.Text);
                driver.Objects("rules", _rules, Rule);
            }));
        json.WriteString("columnKind", "utf16CodeUnits");
        json.Object("originalUriBaseIds", bases => bases.Object(Base, folder =>
            {
                folder.WriteString("uri", _paths.Base);
                Text(folder, "description", "The folder that the command was run in, or the production's.");
            }));
        json.Objects(
            "results",
            [
                .. _found.Findings.Select(f => (Action<Utf8JsonWriter>)(j => Result(j, f, null))),
                .. _found.Waived.Select(w => (Action<Utf8JsonWriter>)(j => Result(j, w.Finding, w.Waiver))),
                .. _found.NotLookedAt.Select(open => (Action<Utf8JsonWriter>)(j => Result(j, open))),
            ],
            (j, result) => result(j)
        );
    }

    static void Rule(Utf8JsonWriter json, string check)
    {
        json.WriteString("id", check);
        if (check == Questions.Topic)
        {
            Text(json, "shortDescription", "What no check could judge, because the record does not say enough.");
            json.Object("help", help => help.WriteString("text", Plainly(Questions.Page)));
            return;
        }

        if (Catalogue.Page(check) is not { } page)
        {
            return;
        }

        Text(json, "shortDescription", Plainly(page.Summary));
        Text(json, "fullDescription", Plainly(page.Description));
        json.Object("help", help =>
        {
            help.WriteString("text", Plainly($"{page.Description}\n\nWhy it matters: {page.Why}"));
            help.WriteString("markdown", Braces($"{page.Description}\n\n## Why it matters\n\n{page.Why}"));
        });
        json.Object("defaultConfiguration", j => j.WriteString("level", Word(page.Level)));
        json.Object("properties", j =>
        {
            j.WriteStartArray("tags");
            j.WriteStringValue(page.Group);
            j.WriteEndArray();
        });
    }

    // "There was insufficient information to decide": SARIF 2.1.0, 3.27.9.
    void Result(Utf8JsonWriter json, NotLookedAt open)
    {
        json.WriteString("ruleId", Questions.Topic);
        json.WriteNumber("ruleIndex", _rules.IndexOf(Questions.Topic));
        json.WriteString("kind", "open");
        json.WriteString("level", "none");
        Text(json, "message", Plainly($"Not looked at: {open.Message}."));
        json.Objects("locations", open.Places.Take(MostPlaces), (j, place) => Location(j, place, null));
        json.Object("partialFingerprints", j => j.WriteString("spoolbook/v1", Digest($"{Questions.Topic}\n{open.Question}")));
    }

    void Result(Utf8JsonWriter json, Finding finding, Waiver? waiver)
    {
        json.WriteString("ruleId", finding.Check);
        json.WriteNumber("ruleIndex", _rules.IndexOf(finding.Check));
        json.WriteString("level", Word(finding.Level));
        Text(json, "message", Report(finding));
        json.Objects("locations", [finding], (j, f) => Location(j, f.Place, f));
        if (finding.Others.Length > 0)
        {
            json.Objects("relatedLocations", finding.Others.Select((o, i) => (o, i)), (j, other) =>
            {
                j.WriteNumber("id", other.i + 1);
                Location(j, other.o.Place, null);
                Text(j, "message", Plainly(other.o.Message));
            });
        }

        if (waiver is not null)
        {
            json.Objects("suppressions", [waiver], Suppression);
        }

        json.Object("partialFingerprints", j => j.WriteString("spoolbook/v1", Fingerprint(finding)));
    }

    void Suppression(Utf8JsonWriter json, Waiver waiver)
    {
        json.WriteString("kind", "inSource");
        json.WriteString("status", "accepted");
        json.WriteString("justification", waiver.Reason?.Value ?? "");
        json.Object("location", j => Location(j, waiver.Place, null));
    }

    void Location(Utf8JsonWriter json, Place place, Finding? about)
    {
        json.Object("physicalLocation", physical =>
        {
            physical.Object("artifactLocation", artifact =>
            {
                artifact.WriteString("uri", _paths.Of(place.File));
                artifact.WriteString("uriBaseId", Base);
            });

            // A file that could not be opened has no lines to point at.
            if (_found.Sources.Line(place.File, place.Line) is { } line)
            {
                physical.Object("region", region => Region(region, place, line));
            }
        });
        if (about?.Roll is { } roll)
        {
            json.Objects("logicalLocations", [about.Take is null ? roll : $"{roll}/{about.Take}"], (j, name) =>
            {
                j.WriteString("name", about.Take is null ? $"roll {roll}" : $"take {about.Take}");
                j.WriteString("fullyQualifiedName", name);
                j.WriteString("kind", about.Take is null ? "roll" : "take");
            });
        }
    }

    static void Region(Utf8JsonWriter json, Place place, string line)
    {
        var from = Math.Min(place.Column - 1, line.Length);
        var length = Math.Min(place.Length, line.Length - from);
        json.WriteNumber("startLine", place.Line);
        json.WriteNumber("startColumn", from + 1);
        json.WriteNumber("endLine", place.Line);
        json.WriteNumber("endColumn", from + length + 1);
        Text(json, "snippet", line.Substring(from, length));
    }

    /// <summary>The sentence, the figures and the advice: viewers that show only the message show all of it.</summary>
    static string Report(Finding finding)
    {
        var parts = new List<string> { finding.Message.TrimEnd('.') + "." };
        if (finding.Figures.Length > 0)
        {
            parts.Add(string.Join(", ", finding.Figures.Select(f => $"{f.Name}: {f.Value}")) + ".");
        }

        if (finding.Help.Length > 0)
        {
            parts.Add(finding.Help);
        }

        return Plainly(string.Join('\n', parts));
    }

    // Braces are doubled, since one alone begins a placeholder (SARIF 2.1.0, 3.11.5). A user's text must not become a link (3.11.6).
    static string Plainly(string text) => Braces(text).Replace("](", "] (", StringComparison.Ordinal);

    static string Braces(string text) => text.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal);

    /// <summary>Check, roll, take and sentence without the place, so that it stays the same when lines are added above.</summary>
    static string Fingerprint(Finding finding) =>
        Digest(string.Join('\n', finding.Check, finding.Roll, finding.Take, finding.Message, finding.Place.File));

    static string Digest(string text) => Convert.ToHexStringLower(Sha256.Of(Encoding.UTF8.GetBytes(text)).AsSpan(0, 16));

    static string Word(Level level) => level.ToString().ToLowerInvariant();

    static void Text(Utf8JsonWriter json, string name, string text) => json.Object(name, j => j.WriteString("text", text));
}
