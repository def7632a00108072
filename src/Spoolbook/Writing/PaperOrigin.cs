using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Spoolbook.Checks;
using Spoolbook.Digests;
using Spoolbook.Film;
using Spoolbook.Papers;
using Spoolbook.Reading;
using Spoolbook.Shoot;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Writing;

/// <summary>
/// What papers were made from: a digest of the record, the findings, the date and the program, and of each template of the user's own
/// that was asked for. It lies beside the papers. Where all of it is the same again and no paper was touched, the papers would be the
/// same, and are not printed. To delete it costs a printing and nothing else.
/// </summary>
/// <param name="Key">The digest.</param>
/// <param name="Templates">
/// The user's own templates by name, with a digest of each; <see cref="FileState.Nothing"/> for one that is not there.
/// </param>
internal sealed record PaperOrigin(string Key, IReadOnlyDictionary<string, string> Templates)
{
    const string Head = "spoolbook papers 1 ";

    /// <summary>Where it lies, from the papers' folder.</summary>
    public static string Name { get; } = WorkFolder.NameInHidden("papers.origin");

    /// <summary>The digest of everything but templates that papers are made from.</summary>
    /// <param name="hasOwn">Whether the user has templates of their own, of which nobody knows yet which are asked for.</param>
    /// <param name="returned">What came back from the lab, by the roll's name.</param>
    public static string KeyOf(
        CheckedProduction found,
        DateTimeOffset made,
        bool draft,
        bool hasOwn,
        ImmutableSortedDictionary<string, CanReturn> returned
    )
    {
        var digest = new Sha256();
        Add(made.ToString("O", CultureInfo.InvariantCulture));
        Add(draft ? "draft" : "");
        Add(hasOwn ? "own templates" : "");
        Add(PaperPrinter.Build);
        foreach (var room in (Type[])[typeof(PaperOrigin), typeof(CheckRunner), typeof(ProductionReader), typeof(Books), typeof(Footage)])
        {
            Add(room.Module.ModuleVersionId.ToString());
        }

        foreach (var file in found.Sources.Names)
        {
            var lines = found.Sources.LinesIn(file);
            var isAbove = new Place(file, 1, 1, 0).IsAbove;
            Add(file);
            Add(isAbove ? "" : lines.ToString(CultureInfo.InvariantCulture));
            var section = "";
            for (var line = 1; line <= lines; line++)
            {
                var text = found.Sources.Line(file, line)!;
                section = text.Length > 0 && char.IsAsciiLetter(text[0]) ? text.Split(':')[0] : section;

                // What the school lends to others is in no paper of this production.
                if (!isAbove || section is not ("loans" or "holidays"))
                {
                    Add(text);
                }
            }
        }

        foreach (var loan in found.Books?.Production.SchoolLoans ?? [])
        {
            Add($"{loan.Piece} {loan.Out} {loan.Back} {loan.CameBack} {loan.By} {loan.Condition} {loan.Note}");
            Add(string.Join('\n', loan.Missing));
        }

        foreach (var (roll, back) in returned)
        {
            Add($"{roll} {back.On} {back.State}");
            Add(string.Join('\n', back.Lights));
            Add(string.Join('\n', back.Faults));
        }

        if (found.Books?.Production.School?.Logo is { } logo)
        {
            Add(logo.File.Value);
            Add(FileState.Of(logo.Bytes.AsSpan()));
        }

        foreach (var finding in found.Findings)
        {
            Say(finding);
        }

        foreach (var waived in found.Waived)
        {
            Say(waived.Finding);
        }

        foreach (var open in found.NotLookedAt)
        {
            Add(open.Message);
        }

        return Convert.ToHexStringLower(digest.Finish());

        void Say(Finding finding)
        {
            Add($"{finding.Level} {finding.Check} {finding.Place}");
            Add(finding.Message);
            Add(finding.Help);
        }

        // With its length, so that no two rows of texts have the same bytes.
        void Add(string text)
        {
            var bytes = Encoding.UTF8.GetBytes(text);
            digest.Add(BitConverter.GetBytes(bytes.Length));
            digest.Add(bytes);
        }
    }

    /// <summary>What the papers in a folder were made from; null where nobody wrote it down.</summary>
    public static PaperOrigin? Read(string folder)
    {
        var path = Path.Combine(folder, Name);
        if (FileState.LinkTarget(path) is not null || !File.Exists(path))
        {
            return null;
        }

        var lines = Encoding.UTF8.GetString(FileState.Bytes(path)).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        if (lines is not [var first, .. var rest] || !first.StartsWith(Head, StringComparison.Ordinal))
        {
            return null;
        }

        var templates = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var line in rest)
        {
            if (line.Split("  ", 2) is not [var state, var name])
            {
                return null;
            }

            templates[name] = state;
        }

        return new PaperOrigin(first[Head.Length..], templates);
    }

    /// <summary>The lines of its file.</summary>
    public byte[] Write() =>
        Encoding.UTF8.GetBytes(
            $"{Head}{Key}\n{string.Concat(Templates.OrderBy(t => t.Key, StringComparer.Ordinal).Select(t => $"{t.Value}  {t.Key}\n"))}"
        );
}
