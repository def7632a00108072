using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance.Browsing;

/// <summary>
/// Productions that are hard on a page, beside those in the repository: the sample in German, the sample with a word of
/// sixty letters for every name and remark, a roll of sixty takes, hardly anything filled in, and Super 8.
/// </summary>
internal static partial class AwkwardShoots
{
    const string LongWord = "Wolkenkratzerdachterrassenmorgennebelstimmungswandelaufnahme";

    const string Nothing = """
        spoolbook: 1
        title: Untitled
        code: X
        lots: [{lot: A, stock: Stock, ei: 100, process: ecn-2, length: 100ft, units: 2}]
        rolls:
          - {roll: 1, lot: A, load: {on: 2026-05-01 08:00, light: dark, head: 2+00}}
          - roll: 2
            lot: A
            load: {on: 2026-05-01 08:00, light: dark, head: 2+00}
            log: [{take: {scene: 1, take: 1, to: 20+00, mark: good}}]
        """;

    const string Super8 = """
        spoolbook: 1
        title: Ferry Holiday
        code: FERRY
        gauge: super8
        units: metres
        people: [{id: eli, name: Eli Brandvold-Naidu, role: Camera}]
        bodies: [{body: S1, speeds: [18, 24], shutter: 150, takes: 15m}]
        lenses: [{lens: 15mm, focal: 15, widest: 1.8, smallest: 22, nearest: 1.2m}]
        lots: [{lot: R40-A, stock: Colour reversal 40 T, ei: 40, balance: tungsten, process: e-6, length: 15m, units: 3}]
        rolls:
          - roll: S1
            lot: R40-A
            unit: 1
            body: S1
            load: {on: 2026-07-04 10:00, by: eli, light: bright, head: 0.2m}
            log:
              - take: {scene: 1, take: 1, to: 3.0m, speed: 18, stop: 8, mark: good, note: Rail}
              - take: {scene: 1, take: 2, to: 5.5m, stop: 8, mark: ng, note: Thumb in the frame}
              - take: {scene: 2, take: 1, to: 9.0m, stop: 11, mark: good, note: Wake}
              - take: {scene: 2, take: 2, to: 14.0m, stop: 11, mark: hold}
            unload: {on: 2026-07-04 16:00, by: eli, light: bright}
            lab: {process: e-6}
        """;

    const string Weir = """
        spoolbook: 1
        title: A Long Day at the Weir
        code: WEIR
        paper: letter
        people: [{id: ana, name: Ana Vesterholt-Bui, role: Camera assistant}]
        bodies: [{body: M1, speeds: [24, 25], shutter: 180, takes: 400ft}]
        lenses: [{lens: 25mm, focal: 25, widest: 1.4, smallest: 22, nearest: 1.5ft}]
        lots:
          - {lot: N250-A, stock: Colour negative 250 D, ei: 250, balance: daylight, process: ecn-2, length: 400ft, units: 2}
        """;

    // Takes of every length, from a flash to half a minute, one of them fogged, and a second exposure of two of them.
    static readonly int[] _lengths = [60, 420, 180, 300, 90, 350, 240, 120];
    static readonly string[] _marks = ["ng", "hold", "good", "ng", "good"];

    /// <summary>Writes them all into a folder; returns the folder of each.</summary>
    public static IReadOnlyList<string> Write(Bench bench)
    {
        var german = bench.CopyOf(Repository.Sample, "awkward/german");
        Change(Path.Combine(german, "production.yaml"), text => text.Replace("language: en", "language: de", StringComparison.Ordinal));
        var endless = bench.CopyOf(Repository.Sample, "awkward/endless");
        foreach (var file in Directory.GetFiles(endless, "*.yaml", SearchOption.AllDirectories))
        {
            Change(file, text => Named().Replace(text, "${key}: " + LongWord));
        }

        return
        [
            german,
            endless,
            Production(bench, "nothing", Nothing),
            Production(bench, "super8", Super8),
            Production(bench, "sixty-takes", Weir + "\nrolls:\n" + SixtyTakes()),
        ];
    }

    static string SixtyTakes()
    {
        var text = new StringBuilder(
            """
              - roll: R01
                lot: N250-A
                unit: 1
                body: M1
                load: {on: 2026-05-01 08:00, by: ana, light: dark, head: 6+00, loops: set, plate: closed, speed-after: 24}
                log:

            """
        );
        var to = 240;
        for (var take = 1; take <= 60; take++)
        {
            to += _lengths[take % _lengths.Length];
            text.Append(
                CultureInfo.InvariantCulture,
                $"      - take: {{scene: {1 + ((take - 1) / 10)}, shot: A, take: {1 + ((take - 1) % 10)}, to: {to}fr, "
                    + $"lens: 25mm, stop: 5.6, focus: 8ft, mark: {_marks[take % _marks.Length]}"
                    + $"{(take % 3 == 0 ? ", note: \"A hand on the sluice, again\"" : "")}}}\n"
            );
        }

        return text + "    unload: {on: 2026-05-01 18:00, by: ana, light: dark, tail: 5+00}\n    lab: {process: ecn-2, push: 0}\n";
    }

    static string Production(Bench bench, string name, string text)
    {
        var folder = bench.PathOf("awkward/" + name);
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "production.yaml"), text);
        return folder;
    }

    static void Change(string file, Func<string, string> change) => File.WriteAllText(file, change(File.ReadAllText(file)));

    [GeneratedRegex(
        "(?<key>\\b(title|code|name|role|what|where|stock|emulsion|notes?|serial|kept|condition-(out|back)|owner|how|receipt|reason|"
            + "said)): (\"[^\"]*\"|[^,}\\]\\n#\"\\[{]+)"
    )]
    private static partial Regex Named();
}
