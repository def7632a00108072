using Spoolbook.Reading.Files;

namespace Spoolbook.Reading.Tests;

/// <summary>A production takes from its school what it does not say itself.</summary>
public sealed class DepartmentTests
{
    const string School = """
        spoolbook: 1
        school: {name: Harbour Street Film School}
        people: [{id: ada, name: Ada Pellworm}, {id: tom, name: Tom Ravensby}]
        lots: [{lot: D250, stock: Colour negative 250 D, ei: 250, process: ecn-2, length: 100ft, units: 12}]
        bodies: [{body: B1, speeds: [24]}, {body: B2, speeds: [24]}]
        labs: [{name: Brackwater, processes: [ecn-2], rates: {currency: EUR}}]
        loans: [{piece: B1, to: ferry, out: 2026-10-01, back: 2026-10-07, by: ada}]

        """;

    const string Ferry = "spoolbook: 1\ntitle: The Last Ferry\ncode: FERRY\n";

    [Fact]
    public void A_production_without_a_school_has_nothing_of_one() =>
        Assert.Null(ProductionReader.Read(TextFiles.Of(("production.yaml", Ferry))).Production!.InSchool);

    [Fact]
    public void A_piece_on_loan_is_in_the_productions_kit_with_its_days_and_its_place_in_the_schools_file()
    {
        var (production, findings, _) = Read("production.yaml", Ferry);
        Assert.Empty(findings);
        var body = Assert.Single(production!.Bodies);
        Assert.Equal(("B1", "../school.yaml", 5), (body.Name.Value, body.Name.Place.File, body.Name.Place.Line));
        Assert.Equal(new DateOnly(2026, 10, 7), body.Returned.Due!.Value);
        Assert.Equal("ada", production.Loan!.BorrowedBy!.Value);
        Assert.Equal(["ada"], production.People.Select(p => p.Id.Value));
        Assert.Equal(("Brackwater", "EUR"), (production.Lab!.Name!.Value, production.Rates!.Currency.Value));
    }

    [Fact]
    public void What_a_production_says_itself_goes_before_the_school()
    {
        var own = Ferry + "school: {name: Evening class}\nlab: {name: Another lab}\n";
        var production = Read("production.yaml", own).Production!;
        Assert.Equal(("Evening class", "Another lab"), (production.School!.Name!.Value, production.Lab!.Name!.Value));
        Assert.Null(production.Rates);
    }

    [Fact]
    public void Units_of_the_schools_stock_are_the_productions_only_once_they_came()
    {
        var (production, findings, _) = Read(
            "production.yaml",
            Ferry + "stock-log:\n  - came: {lot: D250, units: [3], from: shelf, on: 2026-10-01}\n"
        );
        Assert.Empty(findings);
        var lot = Assert.Single(production!.Lots);
        Assert.Equal((0, 12), (lot.Units.Value, lot.OnShelf!.Value));
    }

    [Fact]
    public void A_slip_in_the_schools_file_is_found_there()
    {
        var files = TextFiles.Of(("production.yaml", Ferry), ("../school.yaml", School + "bodys: []\n"));
        var finding = Assert.Single(ProductionReader.Read(files).Findings);
        Assert.Equal(("../school.yaml", 8), (finding.Place.File, finding.Place.Line));
    }

    [Fact]
    public void A_slip_in_a_loan_keeps_no_production_from_its_papers()
    {
        var school = School.Replace("back: 2026-10-07", "back: soon", StringComparison.Ordinal);
        Assert.Empty(ProductionReader.Read(TextFiles.Of(("production.yaml", Ferry), ("../school.yaml", school))).Findings);
        Assert.Single(DepartmentFile.Read(TextFiles.Of(("school.yaml", school))).Findings);
    }

    static ReadResult Read(string name, string text) => ProductionReader.Read(TextFiles.Of((name, text), ("../school.yaml", School)));

    [Theory]
    [InlineData("by: ada", null)]
    [InlineData("by: adda", "`adda` has a piece on loan and is not among the people in school.yaml.")]
    public void A_borrower_is_among_the_schools_people(string by, string? says)
    {
        var files = TextFiles.Of(("school.yaml", School.Replace("by: ada", by, StringComparison.Ordinal)));
        Assert.Equal(says, DepartmentFile.Read(files).Findings.Select(f => f.Message).SingleOrDefault());
    }
}
