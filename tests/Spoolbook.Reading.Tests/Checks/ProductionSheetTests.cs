using Spoolbook.Reading.Files;
using Spoolbook.Reading.Tests.Sheets;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Tests.Checks;

/// <summary>Mistakes in the other files, and between files.</summary>
public sealed class ProductionSheetTests
{
    [Theory]
    [InlineData("production.yaml", "title: Short Pier\n", "", "sheet/missing-key", 1, 1, 9)]
    [InlineData("production.yaml", "code: PIER", "code: SHORT PIER/1", "sheet/bad-code", 3, 7, 12)]
    [InlineData("production.yaml", "code: PIER", "code: PIER\npaper: a5", "sheet/bad-choice", 4, 8, 2)]
    [InlineData("production.yaml", "code: PIER", "code: PIER\nlanguage: english please", "sheet/bad-choice", 4, 11, 14)]
    [InlineData("production.yaml", "code: PIER", "code: PIER\ngauge: 17mm", "sheet/bad-choice", 4, 8, 4)]
    [InlineData("production.yaml", "screen: 6s", "screen: a while", "sheet/bad-duration", 9, 49, 7)]
    [InlineData("production.yaml", "tax: 19%", "tax: 190%", "sheet/bad-fraction", 20, 8, 4)]
    [InlineData("production.yaml", "tax: 19%", "tax: 0.000000000000001/999999999999999", "sheet/bad-fraction", 20, 8, 33)]
    [InlineData("production.yaml", "foot: 0.32", "foot: 0.32, metre: 1.05", "sheet/written-twice", 19, 36, 5)]
    [InlineData("production.yaml", "foot: 0.32, ", "", "sheet/missing-key", 19, 8, 7)]
    [InlineData("production.yaml", "tax: 19%", "scan-foot: 0.45\n  scan-metre: 1.48", "sheet/written-twice", 21, 3, 10)]
    [InlineData("production.yaml", "tax: 19%", "workprint-metre: 1.97\n  workprint-foot: 0.60", "sheet/written-twice", 21, 3, 14)]
    [InlineData("production.yaml", "minimum: 25", "minimum: 25 EUR", "sheet/bad-number", 19, 45, 6)]
    [InlineData("production.yaml", "ratio: 5", "ratio: none", "sheet/bad-number", 10, 35, 4)]
    [InlineData("stock.yaml", "units: 3", "units: three", "sheet/bad-number", 3, 115, 5)]
    [InlineData("stock.yaml", "units: 3", "units: 3, reciprocity: [{time: 10s, stops: -1}]", "sheet/bad-stop", 3, 151, 2)]
    [InlineData(
        "stock.yaml",
        "units: 3",
        "units: 3, reciprocity: [{time: 10s, stops: 1}, {time: 10, stops: 2}]",
        "sheet/written-twice",
        3,
        162,
        2
    )]
    [InlineData("kit.yaml", "finder-loss: 20%", "finder-loss: 20%\n    spring: slack", "sheet/bad-choice", 7, 13, 5)]
    [InlineData("kit.yaml", "finder-loss: 20%", "finder-loss: 120%", "sheet/bad-fraction", 6, 18, 4)]
    [InlineData("kit.yaml", "open: 1/2", "open: 3/2", "sheet/bad-fraction", 9, 28, 3)]
    [InlineData("kit.yaml", "nearest: 1.5ft", "nearest: 1.5", "sheet/bad-distance", 11, 65, 3)]
    [InlineData("kit.yaml", "bodies:\n  - body", "bodies:\n    body", "sheet/wrong-kind", 3, 5, 8)]
    public void A_slip_in_any_file_is_found_in_its_place(
        string file,
        string right,
        string wrong,
        string check,
        int line,
        int column,
        int length
    )
    {
        var text = SmallProduction.Files.Single(f => f.Name == file).Text.Replace(right, wrong, StringComparison.Ordinal);
        var finding = Assert.Single(ProductionReader.Read(SmallProduction.With(file, text)).Findings);

        Assert.Equal((check, new Place(file, line, column, length)), (finding.Check, finding.Place));
    }

    [Fact]
    public void A_rate_by_the_metre_is_read_as_one()
    {
        var text = SmallProduction
            .Head.Replace("foot: 0.32", "metre: 1.05", StringComparison.Ordinal)
            .Replace("tax: 19%", "scan-metre: 1.48\n  workprint-foot: 0.60", StringComparison.Ordinal);
        var read = ProductionReader.Read(SmallProduction.With("production.yaml", text));

        Assert.Empty(read.Findings);
        var rates = read.Production!.Rates!;
        Assert.Equal(
            [(1.05m, LengthUnit.Metres), (1.48m, LengthUnit.Metres), (0.60m, LengthUnit.Feet)],
            new[] { rates.Processes[0].Length, rates.Scan!, rates.Workprint! }.Select(r => (r.Price.Value, r.By))
        );
    }

    [Theory]
    [InlineData(
        "stock.yaml",
        "lots:\n",
        "lots:\n  - {lot: N250-A, stock: Another, ei: 50, process: ecn-2, length: 100ft, units: 1}\n",
        4,
        11
    )]
    [InlineData("kit.yaml", "lenses:\n", "lenses:\n  - {lens: 25mm}\n", 12, 12)]
    [InlineData("kit.yaml", "marks:\n", "marks:\n      - {mark: half, open: 0.4}\n", 10, 16)]
    [InlineData("production.yaml", "people:\n", "people:\n  - {id: ana, name: Another}\n", 6, 10)]
    [InlineData("production.yaml", "days:\n", "days:\n  - {day: 1, on: 2026-10-04}\n", 8, 11)]
    [InlineData("production.yaml", "shots:\n", "shots:\n  - {scene: 1, shot: A}\n", 10, 22)]
    public void A_name_given_twice_is_found_at_its_second_place(string file, string right, string wrong, int line, int column)
    {
        var text = SmallProduction.Files.Single(f => f.Name == file).Text.Replace(right, wrong, StringComparison.Ordinal);
        var finding = Assert.Single(ProductionReader.Read(SmallProduction.With(file, text)).Findings);

        Assert.Equal(("sheet/duplicate-name", line, column), (finding.Check, finding.Place.Line, finding.Place.Column));
        Assert.Equal("first used here", Assert.Single(finding.Others).Message);
    }

    [Fact]
    public void Two_rolls_with_one_name_are_found_across_files()
    {
        var finding = Assert.Single(ProductionReader.Read(SmallProduction.With("rolls/r02.yaml", SmallProduction.Roll)).Findings);

        Assert.Equal(("sheet/duplicate-name", "rolls/r02.yaml"), (finding.Check, finding.Place.File));
        Assert.Equal("rolls/r01.yaml", Assert.Single(finding.Others).Place.File);
    }

    [Fact]
    public void Without_a_production_file_the_rolls_are_still_read()
    {
        var result = ProductionReader.Read(TextFiles.Of([.. SmallProduction.Files.Where(f => f.Name != "production.yaml")]));

        Assert.Equal("sheet/missing-file", Assert.Single(result.Findings).Check);
        Assert.Single(result.Production!.Rolls);
    }

    [Theory]
    [InlineData("stock.yaml", Part.Lots, 3, 6)]
    [InlineData("kit.yaml", Part.Kit, 5, 7)]
    public void A_missing_list_is_flagged_once(string file, Part part, int line, int column)
    {
        var result = ProductionReader.Read(TextFiles.Of([.. SmallProduction.Files.Where(f => f.Name != file)]));

        var finding = Assert.Single(result.Findings);
        Assert.Equal(("sheet/missing-file", line, column), (finding.Check, finding.Place.Line, finding.Place.Column));
        Assert.Equal(part, Assert.Single(result.Production!.Unread));
    }

    [Fact]
    public void A_list_that_could_not_be_read_completely_brings_no_follow_on_finding()
    {
        var head = SmallProduction.Head.Replace("name: Ana", "nmae: Ana", StringComparison.Ordinal);
        var result = ProductionReader.Read(SmallProduction.With("production.yaml", head));

        Assert.Equal("sheet/unknown-key", Assert.Single(result.Findings).Check);
        Assert.Equal(Part.People, Assert.Single(result.Production!.Unread));
    }

    [Fact]
    public void A_parent_in_a_file_that_could_not_be_read_is_not_flagged()
    {
        var shortEnd = SmallProduction
            .Roll.Replace("R01", "R02", StringComparison.Ordinal)
            .Replace("unit: 1", "short-end-of: R01", StringComparison.Ordinal);
        var result = ProductionReader.Read(
            TextFiles.Of([
                .. SmallProduction.Files.Where(f => f.Name != "rolls/r01.yaml"),
                ("rolls/r01.yaml", "spoolbook: 1\nroll: [\n"),
                ("rolls/r02.yaml", shortEnd),
            ])
        );

        Assert.Equal("sheet/not-yaml", Assert.Single(result.Findings).Check);
    }

    [Fact]
    public void An_empty_folder_is_no_production()
    {
        var result = ProductionReader.Read(TextFiles.Of());

        Assert.Null(result.Production);
        Assert.Equal("sheet/missing-file", Assert.Single(result.Findings).Check);
    }

    [Fact]
    public void Every_check_is_listed_once_in_the_house_form()
    {
        Assert.Equal(SheetChecks.All.Distinct(), SheetChecks.All);
        Assert.All(SheetChecks.All, n => Assert.Matches("^(sheet|roll)/[a-z]+(-[a-z]+)*$", n));
    }
}
