using System.Text;
using Spoolbook.Fuzz.Mutations;
using Spoolbook.Reading.Files;

namespace Spoolbook.Fuzz.Targets;

/// <summary>
/// Findings printed with hostile text in everything that they can quote: names of files, titles, notes, values, excerpts.
/// Each line of an input is put into one of these places in turn.
/// </summary>
internal sealed class TextTarget : ITarget
{
    public string Name => "text";

    public IReadOnlyList<MutationKind> Grammar => [.. LineKinds.All, .. FormKinds.All];

    public IEnumerable<string> Run(byte[] input)
    {
        string[] lines = [.. Encoding.UTF8.GetString(input).Split('\n').Take(12), "", "", "", "", ""];
        var production = $"""
            spoolbook: 1
            title: "{Escaped(lines[0])}"
            code: "{Escaped(lines[1])}"
            people: [id: "{Escaped(lines[2])}", name: {lines[3]}]
            {lines[4]}
            """;
        var roll = $"""
            spoolbook: 1
            roll: "{Escaped(lines[1])}"
            lot: "{Escaped(lines[3])}"
            log: [{lines[2]}, take: {lines[0]}, note: '{lines[4].Replace("'", "''", StringComparison.Ordinal)}']
            """;
        var name = lines[0].Replace('/', '-').Replace('\0', '-');
        var files = TextFiles.Of(
            ("production.yaml", production),
            ($"rolls/{name}.yaml", roll),
            ("rolls/r02.yaml", SmallShoot.Text + lines[1])
        );
        var found = Pipeline.Run(files).Found;
        Printing.All(found, "shoot " + name);
        return found.Findings.Select(f => f.Check).Distinct();
    }

    static string Escaped(string value) =>
        string.Concat(
            value.Select(c =>
                c is '"' or '\\' ? "\\" + c
                : c < ' ' ? $"\\x{(int)c:X2}"
                : c.ToString()
            )
        );
}
