using Spoolbook.Reading.Editing;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Tests.Editing;

/// <summary>What happens to a roll after loading goes into its file as a person would write it.</summary>
public class RollEditTests
{
    const string Sheet = """
        # The fridge hums.
        spoolbook: 1
        roll: R1
        lot: N
        unit: 1
        load: {on: 2026-10-04 09:00, by: ines}
        log:
          - wind: full
          # sun out
          - take: {scene: 1, take: 1, to: 9+00, mark: good} # twice the slate
          - note: Clouds
          # and it rained
        lab: {process: ecn-2}

        """;

    [Theory]
    [InlineData("wind", "  - wind: full")]
    [InlineData("wind at=09:17", "  - wind: {at: 09:17}")]
    [InlineData("note note=Clouds", "  - note: Clouds")]
    [InlineData("note note=Clouds at=09:17", "  - note: {at: 09:17, note: Clouds}")]
    [InlineData("rewind to=4+00 shutter=closed", "  - rewind: {to: 4+00, shutter: closed}")]
    [InlineData("run-off lens=capped to=100+00", "  - run-off: {to: 100+00, lens: capped}")]
    [InlineData("fog before=1+20 after=2+00", "  - fog: {before: 1+20, after: 2+00}")]
    [InlineData("take mark=ng scene=1 take=2 to=12+00", "  - take: {scene: 1, take: 2, to: 12+00, mark: ng}")]
    public void A_new_entry_goes_to_the_end_of_the_log_behind_the_comments_on_the_last_one(string entry, string line)
    {
        var (word, keys) = Said(entry);

        Assert.Equal(
            Sheet.Replace("  # and it rained\n", $"  # and it rained\n{line}\n", StringComparison.Ordinal),
            Change(Sheet, AddedEntry.Last(word, keys))
        );
    }

    [Fact]
    public void An_unloaded_roll_gets_its_unloading_after_the_log() =>
        Assert.Equal(
            Sheet.Replace("lab:", "unload: {on: 2026-10-04 16:45, tail: 2+00}\nlab:", StringComparison.Ordinal),
            Change(Sheet, new ChangedPart(RollPart.Unload, Said("unload tail=2+00 on=2026-10-04_16:45").Keys))
        );

    [Fact]
    public void A_removed_entry_leaves_the_comment_beside_it() =>
        Assert.Equal(
            Sheet.Replace("- take: {scene: 1, take: 1, to: 9+00, mark: good} # twice", "# twice", StringComparison.Ordinal),
            Change(Sheet, new RemovedEntry(RollOf(Sheet).Log[1].Place))
        );

    [Fact]
    public void A_log_that_loses_all_its_entries_takes_new_ones()
    {
        var roll = RollOf(Sheet);
        var empty = Change(Sheet, [.. roll.Log.Select(e => new RemovedEntry(e.Place))]);

        Assert.Empty(RollOf(empty).Log);
        Assert.Equal(
            empty.Replace("  # and it rained\n", "  # and it rained\n  - wind: full\n", StringComparison.Ordinal),
            Change(empty, AddedEntry.Last("wind", []))
        );
    }

    [Fact]
    public void A_wind_gets_an_hour_and_a_note_gets_new_words()
    {
        var log = RollOf(Sheet).Log;

        Assert.Equal(
            Sheet
                .Replace("wind: full", "wind: {at: 09:17}", StringComparison.Ordinal)
                .Replace("Clouds", "\"Clouds, and thunder\"", StringComparison.Ordinal),
            Change(
                Sheet,
                new ChangedEntry(log[0].Place, [new("at", "09:17")]),
                new ChangedEntry(log[2].Place, [new("note", "Clouds, and thunder")])
            )
        );
    }

    [Fact]
    public void A_roll_that_loses_its_unloading_is_in_the_camera_again()
    {
        var unloaded = Change(Sheet, new ChangedPart(RollPart.Unload, [new("on", "2026-10-04 16:45")]));

        Assert.Equal(Sheet, Change(unloaded, new RemovedUnload()));
    }

    [Theory]
    [InlineData(true, "# yaml-language-server: $schema=../schemas/roll.schema.json\n")]
    [InlineData(false, "")]
    public void A_newly_loaded_roll_gets_a_file_like_the_others(bool hasSchemas, string first) =>
        Assert.Equal(
            first + "spoolbook: 1\nroll: R2\nlot: N\nunit: 2\nbody: B1\nload: {on: 2026-10-04 17:00, head: 4+00}\nlog:\n",
            NewRollText.File(New("R2", "2"), "\n", hasSchemas)
        );

    [Theory]
    [InlineData("", "rolls:\n  - roll: R1\n    lot: N\n")]
    [InlineData("rolls:\n", "rolls:\n  - roll: R1\n    lot: N\n")]
    [InlineData("rolls: []\n", "rolls:\n  - roll: R1\n    lot: N\n")]
    [InlineData(
        "rolls:\n- roll: R0\n  load: {on: 2026-10-03 09:00}\n  log: []\n  # the end\n",
        "rolls:\n- roll: R0\n  load: {on: 2026-10-03 09:00}\n  log: []\n  # the end\n- roll: R1\n  lot: N\n"
    )]
    public void A_production_in_one_file_gets_the_new_roll_at_the_end_of_its_list(string rolls, string with)
    {
        const string Head = "spoolbook: 1\ntitle: T\ncode: T # of three letters\n";

        var edited = NewRollText.InList("production.yaml", Head + rolls, New("R1", "1"));

        Assert.StartsWith((Head + with).Replace("rolls: []", "rolls:", StringComparison.Ordinal), edited.Text, StringComparison.Ordinal);
        Assert.EndsWith(
            "load: {on: 2026-10-04 17:00, head: 4+00}",
            edited.Text!.TrimEnd().Split('\n')[^2].Trim(),
            StringComparison.Ordinal
        );
    }

    static NewRoll New(string name, string unit) =>
        new(
            [new("body", "B1"), new("roll", name), new("lot", "N"), new("unit", unit)],
            [new("head", "4+00"), new("on", "2026-10-04 17:00")]
        );

    static (string Word, System.Collections.Immutable.ImmutableArray<KeyValue> Keys) Said(string entry)
    {
        var words = entry.Split(' ');
        return (words[0], [.. words.Skip(1).Select(w => w.Split('=')).Select(w => new KeyValue(w[0], w[1].Replace('_', ' ')))]);
    }

    static string Change(string text, params RollChange[] changes)
    {
        var edited = RollText.Open("rolls/roll.yaml", text, RollOf(text).Place)!.Change(changes);
        Assert.Null(edited.Fault);
        return edited.Text!;
    }

    static Roll RollOf(string text)
    {
        var files = TextFiles.Of(("production.yaml", "spoolbook: 1\ntitle: T\ncode: T\n"), ("rolls/roll.yaml", text));
        return ProductionReader.Read(files).Production!.Rolls.Single();
    }
}
