using CsCheck;
using Spoolbook.Entry.Lines;

namespace Spoolbook.Entry.Tests.Lines;

/// <summary>What was typed and not read is a lost figure: a word is either in the record or the line is refused.</summary>
public sealed class NothingDroppedTests
{
    const int Lines = 20_000;

    static readonly string[] _lines =
    [
        "1A/4 to 70 16fps f8 25mm 9ft G",
        "1A/next 70+12 f/8 no filter NG",
        "next 1252fr T2 85 1/2 H",
        "take scene 12A shot B take 3 70 G",
        "1A/4 70 stop \"5.6 1/3\" reading 5.6 M1 measured 6ft,9ft G",
        "1A/4 frames 96 twos daylight 50hz E1 sync fade out 48 G 13:52",
        "wind",
        "wind 13:52",
        "rewind 27+28 closed zeroed",
        "run off 100 capped 12:33",
        "run-off 100 capped",
        "fog 1+20 2+00",
        "reload 13:40 by ines in B2 dark zero-moved 1+08 lost 2 to 39+20",
        "note 13:52 Clouds",
        "load R04 N250-A/3 in B1 by ines 9:15 head 4",
        "load R04 short end of R03 length 38 2026-10-05 9:15 24fps ready all except gate,loops",
        "R04: load N250-A/3 9:15",
        "unload 16:45 tail 2, 38 left",
        "unload 16:45 tail 2, totals G 45+08 H 22 no good 21 W 12 SE 0 total 100 takes 10",
        "amend 1A/3 NG 6ft",
        "amend scene 1 shot A take 3 NG",
        "amend last NG",
        "strike 1A/3",
        "strike scene 1 shot A take 3",
        "strike last",
        "#K3-12 strike",
        "#K3-12 R03: wind",
        "day 2026-10-03",
    ];

    static readonly string[] _nonsense =
    [
        "xyzzy",
        "sheet",
        "gut",
        "Xq,",
        "xyzzy;",
        "xyzzy:",
        ": xyzzy",
        "\"xyzzy\"",
        "xyz7",
        "4x4",
        "-xyzzy",
        "no",
    ];

    static readonly Gen<(string Line, string Word)> _spoilt = Gen.Select(Gen.OneOf(_lines), Gen.OneOf(_nonsense), Gen.Int[0, 30])
        .Select(s => (Put(s.Item1, s.Item2, s.Item3), s.Item2.Trim(':', ',', ';', ' ', '"')));

    [Fact]
    public void Each_of_the_lines_is_read_as_it_is() => Assert.All(_lines, line => Assert.NotNull(Said.Line(line).Said));

    [Fact]
    public void A_word_too_many_at_any_place_is_refused_or_is_in_the_record() =>
        _spoilt.Sample(
            spoilt =>
            {
                if (Said.Line(spoilt.Line) is { Said: { } said, Refused: null })
                {
                    Assert.True(IsKept(said, spoilt.Word), $"{spoilt.Line} drops {spoilt.Word}: {Said.Keys(spoilt.Line)}");
                }
                else
                {
                    Assert.InRange(Said.Line(spoilt.Line).Refused!.Place.Column, 1, spoilt.Line.Length);
                }
            },
            iter: Lines,
            threads: 1
        );

    // Free text holds it where the verb has a remark, and so does a name that the production has no list of.
    static bool IsKept(SaidLine said, string word) =>
        said.Keys.Any(k => k.Values.Any(v => v.Contains(word, StringComparison.OrdinalIgnoreCase)))
        || (said.Roll?.Contains(word, StringComparison.OrdinalIgnoreCase) ?? false)
        || (word == "no" && (said.NotNoted.Length > 0 || said.Keys.Any(k => k.Values.Contains("no"))));

    static string Put(string line, string word, int at)
    {
        var words = line.Split(' ').ToList();
        words.Insert(Math.Min(at, words.Count), word);
        return string.Join(' ', words);
    }
}
