using CsCheck;
using Spoolbook.Reading.Editing;
using Spoolbook.Reading.Files;

namespace Spoolbook.Reading.Tests.Editing;

/// <summary>Writing into a roll file makes exactly the intended change, or none.</summary>
public class WritingTests
{
    static readonly Gen<string> _anyWords = Gen.OneOf(
        Gen.String,
        Gen.Char[": #{}[],&*!|>'\"%@`-?~\\\n\tab0"].Array[0, 12].Select(chars => new string(chars)),
        OneOf("null", "~", "yes", "- x", "a: b", "a #b", "'", "\"", "\\", "a\nb", " x ", "x:", "0x1F", "1e3", "=A1", "«ж»", "🎬")
    );

    static readonly string[] _files =
    [
        .. from folder in (string[])
            [
                Repository.Sample,
                Path.Combine(TestFolders.Clean, "many-alphabets"),
                Path.Combine(TestFolders.Clean, "passes"),
                Path.Combine(TestFolders.Clean, "animation"),
            ]
        from file in Directory.GetFiles(Path.Combine(folder, "rolls")).Order(StringComparer.Ordinal)
        where File.ReadAllText(file).Contains("take:", StringComparison.Ordinal)
        select file,
    ];

    [Fact]
    public void Any_words_written_into_any_take_are_read_back_unchanged() =>
        Gen.Select(Gen.Int[0, _files.Length - 1], Gen.Int[0, 1000], _anyWords, _anyWords, Gen.Bool)
            .Sample(
                (file, take, note, lens, windows) =>
                {
                    var text = File.ReadAllText(_files[file]).ReplaceLineEndings(windows ? "\r\n" : "\n");
                    var roll = RollOf(text);
                    var at = roll.Takes.ElementAt(take % roll.Takes.Count());
                    if (
                        note.Length == 0
                        || lens.Length == 0
                        || (note + lens).EnumerateRunes().Any(r => r.Value is 0xFFFD or 0xFFFE or 0xFFFF)
                    )
                    {
                        return;
                    }

                    var edited = RollText
                        .Open("rolls/roll.yaml", text, roll.Place)!
                        .Change([
                            new ChangedEntry(at.Place, [new KeyValue(TakeKeyNames.Note, note), new KeyValue(TakeKeyNames.Lens, lens)]),
                        ]);

                    Assert.Null(edited.Fault);
                    var after = RollOf(edited.Text!).Takes.ElementAt(take % roll.Takes.Count());
                    Assert.Equal((note, lens), (after.Note!.Value, after.Lens!.Value));
                    Assert.Equal(Comments(text), Comments(edited.Text!));
                },
                iter: 100,
                threads: 1
            );

    [Theory]
    [InlineData("log:\n", "log:\n  - take: {scene: 1, take: 1, to: 9+00, mark: good}\n")]
    [InlineData("log: # nothing yet\n", "log: # nothing yet\n  - take: {scene: 1, take: 1, to: 9+00, mark: good}\n")]
    [InlineData("log: []\n", "log: [{take: {scene: 1, take: 1, to: 9+00, mark: good}}]\n")]
    [InlineData("", "log:\n  - take: {scene: 1, take: 1, to: 9+00, mark: good}\n")]
    public void A_roll_that_has_no_log_yet_gets_one(string log, string with)
    {
        const string Head = "roll: R1\nlot: N\nload: {on: 2026-10-04 09:00}\n";
        var roll = RollOf(Head + log);

        var edited = RollText
            .Open("rolls/roll.yaml", Head + log, roll.Place)!
            .Change([AddedEntry.Take(null, [new("scene", "1"), new("take", "1"), new("to", "9+00"), new("mark", "good")])]);

        Assert.Equal(Head + with, edited.Text);
    }

    [Theory]
    [InlineData("log:\n  - &a\n    take: {scene: 1, take: 1, to: 9+00, mark: good, lens: 25mm}\n  - *a\n")]
    [InlineData(
        "log:\n  - take: {scene: 1, take: 1, to: 9+00, mark: good, lens: &l 25mm}\n  - take: {scene: 1, take: 2, to: 19+00, mark: good, "
            + "lens: *l}\n"
    )]
    public void A_take_that_an_alias_repeats_is_left_for_a_change_by_hand(string log)
    {
        var text = "roll: R1\nlot: N\nload: {on: 2026-10-04 09:00}\n" + log;
        var roll = RollOf(text);

        var edited = RollText
            .Open("rolls/roll.yaml", text, roll.Place)!
            .Change([new ChangedEntry(roll.Takes.First().Place, [new KeyValue(TakeKeyNames.Lens, "10mm")])]);

        Assert.Null(edited.Text);
        Assert.Contains("by hand", edited.Fault!.Help, StringComparison.Ordinal);
    }

    static Gen<string> OneOf(params string[] words) => Gen.Int[0, words.Length - 1].Select(i => words[i]);

    static Shoot.Records.Roll RollOf(string text)
    {
        var files = TextFiles.Of(("production.yaml", "spoolbook: 1\ntitle: T\ncode: T\n"), ("rolls/roll.yaml", text));
        return ProductionReader.Read(files).Production!.Rolls.Single();
    }

    static List<string> Comments(string text) => [.. text.Split('\n').Where(l => l.TrimStart().StartsWith('#'))];
}
