using System.Collections.Immutable;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Tests.Sheets;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Tests.Hostile;

/// <summary>No record in a production's folder is skipped without a finding.</summary>
public sealed class PassedOverTests : IDisposable
{
    readonly ScratchFolder _folder = new();

    public PassedOverTests()
    {
        foreach (var (name, text) in SmallProduction.Files)
        {
            Put(name, text);
        }
    }

    [Theory]
    [InlineData("rolls/r05.yaml.txt")]
    [InlineData("rolls/r05.yaml~")]
    [InlineData("rolls/r05.yaml.before")]
    [InlineData("rolls/r05.yaml.part")]
    [InlineData("rolls/r05.yml.bak")]
    [InlineData("rolls/r05.txt")]
    [InlineData("rolls/r05")]
    [InlineData("rolls/day 2/r05.yaml")]
    [InlineData("rolls/day 2/late/r05.yaml")]
    [InlineData("Rolls of day 2/r05.yaml")]
    [InlineData("r05.yaml")]
    [InlineData("r05.yaml.txt")]
    [InlineData("r05.txt")]
    public void A_roll_that_is_not_read_is_an_error_that_names_it(string name)
    {
        Put(name, Roll("R05"));

        var finding = Assert.Single(Findings());
        Assert.Equal(("sheet/not-read", Level.Error, name, "R05"), (finding.Check, finding.Level, finding.Place.File, finding.Roll));
        Assert.Contains("R05", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rolls/r05.YAML")]
    [InlineData("rolls/r05.Yml")]
    [InlineData("rolls/r05 (copy).yaml")]
    public void A_sheet_with_capitals_or_blanks_in_its_name_is_read(string name)
    {
        Put(name, Roll("R02"));

        Assert.Empty(Findings());
        Assert.Equal(["R01", "R02"], Read().Production!.Rolls.Select(r => r.Name.Value));
    }

    [Fact]
    public void A_copy_that_is_read_is_a_second_roll_of_the_same_name()
    {
        Put("rolls/r01 (copy).yaml", Roll("R01"));

        Assert.Contains(Findings(), f => f.Check == "sheet/duplicate-name" && f.Place.File == "rolls/r01.yaml");
    }

    [Theory]
    [InlineData("rolls/r01.yaml~")]
    [InlineData("rolls/r01.yaml.before")]
    [InlineData("rolls/old/r01.yaml")]
    [InlineData("r01.yaml")]
    public void A_copy_of_a_roll_that_is_read_is_a_warning(string name)
    {
        Put(name, Roll("R01"));

        var finding = Assert.Single(Findings());
        Assert.Equal(("sheet/not-read", Level.Warning, name), (finding.Check, finding.Level, finding.Place.File));
        Assert.Equal("rolls/r01.yaml", Assert.Single(finding.Others).Place.File);
    }

    [Theory]
    [InlineData("rolls/r05.yaml.part", "")]
    [InlineData("rolls/r05.yaml.txt", "spoolbook: 1\n")]
    [InlineData("r05.yaml", "")]
    public void An_empty_or_cut_off_file_among_the_sheets_is_an_error(string name, string text)
    {
        Put(name, text);

        Assert.Equal(("sheet/not-read", Level.Error, name), Shown(Assert.Single(Findings())));
    }

    [Theory]
    [InlineData("production.yml", "production.yaml")]
    [InlineData("stock.yml", "stock.yaml")]
    [InlineData("kit.yml", "kit.yaml")]
    public void Of_two_files_of_one_kind_the_one_that_is_read_is_named(string name, string read)
    {
        Put(name, "spoolbook: 1\n");

        var finding = Assert.Single(Findings());
        Assert.Equal(("sheet/not-read", Level.Error, name), Shown(finding));
        Assert.Contains($"only `{read}` is read", finding.Message, StringComparison.Ordinal);
        Assert.Equal("Short Pier", Read().Production!.Title.Value);
    }

    [Theory]
    [InlineData("stock.yaml", "stock.yaml.bak")]
    [InlineData("stock.yaml", "raw stock.txt")]
    [InlineData("kit.yaml", "kit.txt")]
    [InlineData("production.yaml", "production.yaml.txt")]
    public void A_list_under_another_name_is_an_error(string name, string renamed)
    {
        File.Move(PathOf(name), PathOf(renamed));

        Assert.Contains(("sheet/not-read", Level.Error, renamed), Findings().Select(Shown));
    }

    [Theory]
    [InlineData("README.md", "# The pier\n\nspoolbook: 1\n")]
    [InlineData("notes.txt", "title: what we need\n")]
    [InlineData("settings.yml", "other: program\n")]
    [InlineData("pier.svg", "<svg/>")]
    [InlineData("takes.csv", "roll,take\nR05,1\n")]
    [InlineData("rolls/notes.txt", "R05 is in the fridge\n")]
    [InlineData("rolls/r05.jpg", "\u0001\u0002")]
    [InlineData("papers/r05.yaml", "spoolbook: 1\nroll: R05\n")]
    [InlineData("schemas/roll.yaml", "spoolbook: 1\nroll: R05\n")]
    [InlineData("templates/words.en.txt", "spoolbook: 1\nroll: R05\n")]
    [InlineData(".spoolbook/undo/r05.yaml", "spoolbook: 1\nroll: R05\n")]
    [InlineData(".git/r05.yaml", "spoolbook: 1\nroll: R05\n")]
    [InlineData("rolls/.r05.yaml.k3x", "spoolbook: 1\nroll: R05\n")]
    [InlineData("other/settings.yaml", "other: program\n")]
    public void A_file_that_is_not_a_record_is_not_flagged(string name, string text)
    {
        Put(name, text);

        Assert.Empty(Findings());
    }

    [Fact]
    public void A_folder_with_a_production_of_its_own_is_another_production()
    {
        Put("second film/production.yaml", SmallProduction.Head);
        Put("second film/rolls/r05.yaml", Roll("R05"));

        Assert.Empty(Findings());
    }

    [Fact]
    public void An_unread_roll_brings_no_finding_about_the_consignment_that_names_it()
    {
        Put(
            "production.yaml",
            SmallProduction.Head.Replace(
                "  processes:",
                "  consignments:\n    - {rolls: [R01, R05]}\n  processes:",
                StringComparison.Ordinal
            )
        );
        Put("rolls/r05.yaml.txt", Roll("R05"));

        Assert.Equal(("sheet/not-read", Level.Error, "rolls/r05.yaml.txt"), Shown(Assert.Single(Findings())));
    }

    [Fact]
    public void A_roll_that_has_papers_and_is_gone_is_an_error()
    {
        Put("papers/ledger.json", Ledger("PIER", ("R01", "2026-10-04T09:10"), ("R02", "2026-10-05T09:10")));

        var finding = Assert.Single(Findings());
        Assert.Equal(("roll/gone", Level.Error, "R02"), (finding.Check, finding.Level, finding.Roll));
    }

    [Theory]
    // In another order, with takes in the roll.
    [InlineData("{\"rolls\": [{\"takes\": [{\"roll\": \"R07\"}], \"roll\": \"R02\"}], \"production\": {\"code\": \"PIER\"}}")]
    // Saved again by an editor.
    [InlineData("\uFEFF{\"production\": {\"code\": \"PIER\"}, \"practice-rolls\": [{\"roll\": \"R02\"}]}")]
    public void A_gone_roll_is_found_in_whatever_order_the_ledger_is(string ledger)
    {
        Put("papers/ledger.json", ledger);

        var finding = Assert.Single(Findings());
        Assert.Equal(("roll/gone", "R02"), (finding.Check, finding.Roll));
    }

    [Theory]
    [InlineData("PIER", "OLD", "2026-10-04T09:10")] // the same roll under another name
    [InlineData("FERRY", "R02", "2026-10-05T09:10")] // another production's papers
    public void A_renamed_roll_and_the_ledger_of_another_production_are_not_flagged(string code, string roll, string loadedOn)
    {
        Put("papers/ledger.json", Ledger(code, (roll, loadedOn)));

        Assert.Empty(Findings());
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{\"production\": {\"code\": \"PIER\"}, \"rolls\": [1, null, {}, {\"roll\": 5}]}")]
    [InlineData("{\"production\": \"PIER\", \"rolls\": {}}")]
    [InlineData("{\"production\": {\"code\": \"PIER\"}, \"rolls\"")]
    public void A_spoilt_ledger_is_ignored(string ledger)
    {
        Put("papers/ledger.json", ledger);

        Assert.Empty(Findings());
    }

    [Theory]
    [InlineData("roll: R01\n", "roll: r01\n", "capitals")]
    [InlineData("roll: Café\n", "roll: Cafe\u0301\n", "accent")]
    [InlineData("roll: Ǻ1\n", "roll: a\u030A\u03011\n", "accent")]
    public void Roll_names_that_a_disk_takes_for_the_same_are_an_error(string first, string second, string why)
    {
        Put("rolls/r01.yaml", SmallProduction.Roll.Replace("roll: R01\n", first, StringComparison.Ordinal));
        Put("rolls/r02.yaml", SmallProduction.Roll.Replace("roll: R01\n", second, StringComparison.Ordinal));

        var finding = Assert.Single(Findings());
        Assert.Equal(("sheet/names-alike", Level.Error), (finding.Check, finding.Level));
        Assert.Contains(why, finding.Message, StringComparison.Ordinal);
        Assert.Equal(2, Assert.Single(finding.Others).Place.Line);
    }

    [Theory]
    [InlineData("R 1", "R-1")]
    [InlineData("Café", "Cafe")]
    public void Roll_names_that_a_disk_keeps_apart_are_not_flagged(string first, string second)
    {
        Put("rolls/r01.yaml", Roll(first));
        Put("rolls/r02.yaml", Roll(second));

        Assert.Empty(Findings());
    }

    [Fact]
    public void Body_names_that_a_disk_takes_for_the_same_are_an_error()
    {
        var kit = SmallProduction.Kit;
        var body = kit[kit.IndexOf("  - body", StringComparison.Ordinal)..kit.IndexOf("lenses:", StringComparison.Ordinal)];
        Put("kit.yaml", kit.Replace(body, body + body.Replace("B1", "b1", StringComparison.Ordinal), StringComparison.Ordinal));

        Assert.Equal("sheet/names-alike", Assert.Single(Findings()).Check);
    }

    [Theory]
    [InlineData("R1 R2 R4", "R3")]
    [InlineData("R08 R09 R11", "R10")]
    [InlineData("A001 A002 A004 B001", "A003")]
    [InlineData("R02 R03 R04", "R01")]
    [InlineData("R2 R3", null)]
    [InlineData("R2 R3 R5", "R4")]
    [InlineData("R3 R4 R5", null)] // a second unit goes on from the first
    [InlineData("R1 R2 R3", null)]
    [InlineData("R1 R3", null)] // two rolls are too few to count by
    [InlineData("R1 R2 R5", null)] // numbered some other way
    [InlineData("R1 R3 R5 R7", null)]
    [InlineData("A1 B2 A3 A4", null)] // two cameras share one count
    [InlineData("1A 1B 1D", null)]
    [InlineData("Monday Tuesday Pier4", null)]
    public void One_number_left_out_of_a_count_of_rolls_is_a_warning(string rolls, string? missing)
    {
        File.Delete(PathOf("rolls/r01.yaml"));
        foreach (var roll in rolls.Split(' '))
        {
            Put($"rolls/{roll}.yaml", Roll(roll));
        }

        Assert.Equal(
            missing is null ? [] : [("roll/number-skipped", Level.Warning, missing)],
            Findings().Select(f => (f.Check, f.Level, f.Roll!))
        );
    }

    [Theory]
    [InlineData("title: Short Pier #2", "#2", "\"Short Pier #2\"")]
    [InlineData("title: Short Pier   #two # and more", "#two", "\"Short Pier #two\"")]
    [InlineData("title: The \"Pier\" #2", "#2", "'The \"Pier\" #2'")]
    public void A_text_that_a_number_sign_cuts_off_is_a_warning(string line, string rest, string written)
    {
        Put("production.yaml", SmallProduction.Head.Replace("title: Short Pier", line, StringComparison.Ordinal));

        var finding = Assert.Single(Findings());
        Assert.Equal(("sheet/text-cut", Level.Warning, 2), (finding.Check, finding.Level, finding.Place.Line));
        Assert.Equal((line.IndexOf('#') + 1, rest.Length), (finding.Place.Column, finding.Place.Length));
        Assert.Contains(written, finding.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("title: Short Pier # the second one")]
    [InlineData("title: \"Short Pier\" #2")]
    [InlineData("title: Short#2 Pier")]
    [InlineData("title: Short Pier\n#2")]
    [InlineData("title: Short Pier #")]
    [InlineData("title: Short Pier\nunits: feet #2")]
    public void A_comment_that_cuts_nothing_off_is_not_flagged(string line)
    {
        Put("production.yaml", SmallProduction.Head.Replace("title: Short Pier", line, StringComparison.Ordinal));

        Assert.Empty(Findings());
    }

    public void Dispose() => _folder.Dispose();

    static string Roll(string name) => SmallProduction.Roll.Replace("roll: R01", $"roll: {name}", StringComparison.Ordinal);

    static string Ledger(string code, params (string Roll, string LoadedOn)[] rolls)
    {
        var written = rolls.Select(r => $$"""{"roll": "{{r.Roll}}", "loaded-on": "{{r.LoadedOn}}"}""");
        return $$"""{"production": {"code": "{{code}}"}, "rolls": [{{string.Join(", ", written)}}]}""";
    }

    static (string, Level, string) Shown(Finding finding) => (finding.Check, finding.Level, finding.Place.File);

    ReadResult Read() => ProductionReader.Read(new FolderFiles(_folder.Path));

    ImmutableArray<Finding> Findings() => Read().Findings;

    string PathOf(string name) => Path.Combine(_folder.Path, name);

    void Put(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(PathOf(name))!);
        File.WriteAllText(PathOf(name), text);
    }
}
