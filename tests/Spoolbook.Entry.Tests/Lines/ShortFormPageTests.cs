using System.Collections.Immutable;
using System.Text;
using Spoolbook.Entry.Lines;
using Spoolbook.Reading.Editing;

namespace Spoolbook.Entry.Tests.Lines;

/// <summary>The page of the short form shows what the reader really makes of its examples, and every token there is.</summary>
public sealed class ShortFormPageTests
{
    const string FromHere = "<!-- From here on scripts/reference-lines writes it, out of the grammar. -->\n";

    static readonly ImmutableArray<string> _examples =
    [
        "1A/4 to 70 16fps f8 25mm 9ft G soft at the end",
        "1A/next 70+12 f/8 no filter NG",
        "next 1252fr T2 85 1/2 H",
        "take scene 12A shot B take 3 70 G",
        "1A/4 frames 96 twos daylight 50hz E1 sync fade out 48 G 13:52",
        "1A/4 70 stop \"5.6 1/3\" reading 5.6 M1 measured 6ft,9ft G: 25mm was soft",
        "wind",
        "rewind 27+28 closed zeroed",
        "run off 100 capped 12:33",
        "fog 1+20 2+00",
        "reload 13:40 by ines in B2 dark zero-moved 1+08 lost 2 to 39+20",
        "note Clouds came in",
        "load R04 N250-A/3 in B1 by ines 9:15 head 4",
        "load R04 short end of R03 length 38 2026-10-05 9:15 24fps ready all except gate,loops",
        "unload 16:45 tail 2, 38 left",
        "unload 16:45 tail 2, totals G 45+08 H 22 NG 21 W 12 SE 0 total 100 takes 10",
        "amend 1A/3 NG 6ft",
        "strike last",
        "day 2026-10-03",
    ];

    [Fact]
    public void The_page_of_the_short_form_is_what_the_grammar_says()
    {
        var kept = File.ReadAllText(Path.Combine(Repository.Root, "src", "Spoolbook.Entry", "SHORT-FORM.md"));
        var told = kept[..(kept.IndexOf(FromHere, StringComparison.Ordinal) + FromHere.Length)];

        ReferencePage.Holds(told + Examples() + Tables(), "Spoolbook.Entry", "SHORT-FORM.md", "reference-lines");
    }

    static string Tables() =>
        "\n## The tokens of each verb\n\nWhat `amend` says is what a take says.\n"
        + ShortFormTables.Markdown()
        + "\n## The same things elsewhere\n\nIn the same order everywhere; on paper the mark is beside the slate.\n\n"
        + ShortFormTables.Elsewhere();

    // After 1A/3 with 10mm, 8/11, ND6 and PL, 5ft 6in on R03, in the camera on 4 October.
    static string Examples()
    {
        var text = new StringBuilder(
            "\n## Examples\n\n"
                + "Said on 2026-10-04, with R03 in the camera; its last take is 1A/3 with 10mm, 8/11, ND6 and PL, at 5ft 6in.\n\n"
                + "| line | the file says |\n|---|---|\n"
        );
        foreach (var example in _examples)
        {
            var said = Said.Line(example).Said!;
            var yaml = said.Verb switch
            {
                LineVerb.Strike => "(the entry is gone)",
                LineVerb.Day => "(nothing)",
                LineVerb.Load => $"`{Keys(said, EntryTables.IsOfRoll)}, load: {{{Keys(said, k => !EntryTables.IsOfRoll(k))}}}`",
                LineVerb.Note => $"`note: {said["note"][0]}`",
                _ => $"`{Word(said.Verb)}: {{{Said.Keys(example).Replace("filter -", "", StringComparison.Ordinal).TrimEnd(',', ' ')}}}`",
            };
            text.Append($"| `{example}` | {yaml} |\n");
        }

        return text.ToString();
    }

    static string Keys(SaidLine said, Func<string, bool> isOne) =>
        string.Join(
            ", ",
            said.Keys.Where(k => isOne(k.Key))
                .Select(k => $"{k.Key}: {(k.Values.Length == 1 ? k.Values[0] : $"[{string.Join(", ", k.Values)}]")}")
        );

    static string Word(LineVerb verb) =>
        verb switch
        {
            LineVerb.RunOff => "run-off",
            LineVerb.Amend => "take",
            _ => verb.ToString().ToLowerInvariant(),
        };
}
