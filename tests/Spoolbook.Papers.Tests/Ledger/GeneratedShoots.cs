using System.Globalization;
using System.Text;
using CsCheck;

namespace Spoolbook.Papers.Tests.Ledger;

/// <summary>Random shoots as YAML, so that they go the whole way from the reader on.</summary>
static class GeneratedShoots
{
    static readonly string[] Marks = ["good", "good", "hold", "ng", "test"];

    static readonly Gen<string> Roll =
        from head in Gen.Int[0, 200]
        from takes in Take.Array[0, 9]
        from tail in Gen.Int[0, 80]
        from day in Gen.Int[2, 5]
        from extra in Gen.Int[0, 2]
        from state in Gen.Int[0, 5]
        from push in Gen.Int[-1, 2]
        select $$"""
                body: B1
                load: {on: 2026-10-0{{day}} 09:00, head: {{head}}fr}
                log: [{{string.Join(", ", Log(takes, head))}}]
            {{(
                state == 0
                    ? ""
                    : $"    unload: {{on: 2026-10-0{day + extra} 17:00, tail: {tail}fr, short-end: {(state == 1 ? "thrown" : "kept")}}}"
            )}}
                lab: {push: {{push}}}
            """;

    static readonly Gen<string> StockEntry =
        from word in Gen.OneOf(
            Gen.Const("came"),
            Gen.Const("sent-away"),
            Gen.Const("lost"),
            Gen.Const("damaged"),
            Gen.Const("recanned"),
            Gen.Const("split")
        )
        from unit in Gen.Int[1, 9]
        from parent in Gen.Int[0, 9]
        from day in Gen.Int[1, 8]
        from off in Gen.Int[1, 400]
        from price in Gen.Int[0, 8000]
        let what = word != "split" && parent is (0 or > 6) ? $"lot: N, units: [{unit}, {unit + 1}]" : $"short-end-of: R{parent}"
        let more = word == "recanned" ? $", off: {off}fr"
        : word == "split" ? $", into: [{off}fr, {off * 2}fr]"
        : word is "came" or "sent-away" && price < 6000 ? $", price: {Part(price, 100)}"
        : ""
        select $"{{{word}: {{{what}, on: 2026-10-0{day}{more}}}}}";

    public static Gen<string> Yaml { get; } =
        from rolls in Roll.Array[1, 6]
        from foot in Gen.Int[1, 9999]
        from minimum in Gen.Int[0, 9999]
        from scan in Gen.Int[0, 9999]
        from tax in Gen.Int[0, 250]
        from cut in Gen.Bool
        from metres in Gen.Bool
        from stock in StockEntry.Array[0, 6]
        from listed in Gen.Int[0, 12]
        select Production(rolls, foot, minimum, scan, tax, cut, metres, stock, listed);

    static string Part(int number, int of) => (number / (decimal)of).ToString(CultureInfo.InvariantCulture);

    static Gen<(int Length, string Mark, int Scene, bool Again)> Take =>
        from length in Gen.Int[1, 900]
        from mark in Gen.Int[0, Marks.Length - 1]
        from scene in Gen.Int[1, 9]
        from again in Gen.Int[0, 5]
        select (length, Marks[mark], scene, again == 0);

    static IEnumerable<string> Log((int Length, string Mark, int Scene, bool Again)[] takes, int head)
    {
        var at = head;
        foreach (var ((length, mark, scene, again), i) in takes.Select((t, i) => (t, i)))
        {
            if (again && at > head)
            {
                at = (at + head) / 2;
                yield return $"{{rewind: {{to: {at}fr, shutter: closed}}}}";
            }

            at += length;
            yield return $"{{take: {{scene: {scene}, shot: A, take: {i + 1}, to: {at}fr, mark: {mark}}}}}";
        }
    }

    static string Production(string[] rolls, int foot, int minimum, int scan, int tax, bool cut, bool metres, string[] stock, int listed)
    {
        var yaml = new StringBuilder(
            $$"""
            spoolbook: 1
            title: Drawn by lot
            code: LOT
            units: {{(metres ? "metres" : "feet")}}
            plan: {running-time: 200s}
            days: [{{string.Join(", ", Enumerable.Range(2, cut ? 7 : 2).Select(d => $"{{day: {d}, on: 2026-10-0{d}}}"))}}]
            shots: [{{string.Join(", ", Enumerable.Range(1, listed).Select(s => $"{{scene: {s}, shot: A}}"))}}]
            lab: {services: [prep, scan]}
            rates:
              currency: EUR
              process: [{process: ecn-2, {{(foot % 3 == 0 ? "metre" : "foot")}}: {{Part(foot, 10000)}}, minimum: {{Part(minimum, 100)}}}]
              push-stop: 12.5
              {{(scan % 2 == 0 ? $"scan-{(scan % 4 == 0 ? "metre" : "foot")}: {Part(scan, 10000)}" : $"scan-hour: {Part(scan, 10)}")}}
              shipping: 18
              tax: {{Part(tax, 1000)}}
            lots: [{lot: N, stock: Negative, ei: 250, process: ecn-2, length: 100ft, units: 6, unit-price: 38.50}]
            stock-log: [{{string.Join(", ", stock)}}]
            bodies: [{body: B1, speeds: [24], shutter: 180}]
            rolls:

            """.ReplaceLineEndings("\n")
        );
        for (var i = 0; i < rolls.Length; i++)
        {
            // Two of three rolls may be cut from the one before them. Where that left nothing, they have no strip.
            var from =
                cut && i % 3 > 0
                    ? $"short-end-of: R{i - (i % 3) + 1}{(i % 3 == 1 ? "\n    length: 400fr" : "")}"
                    : $"lot: N\n    unit: {i + 1}";
            yaml.Append(CultureInfo.InvariantCulture, $"  - roll: R{i + 1}\n    {from}\n{rolls[i]}\n");
        }

        return yaml.ToString();
    }
}
