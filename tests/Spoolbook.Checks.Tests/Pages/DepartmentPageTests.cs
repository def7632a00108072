namespace Spoolbook.Checks.Tests.Pages;

/// <summary>The pages of the checks on all productions of a school together.</summary>
public sealed class DepartmentPageTests
{
    public static TheoryData<string> Names => [.. CheckList.All.OfType<DepartmentCheck>().Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void What_a_page_shows_as_flagged_is_flagged_in_those_words_and_nothing_else_is(string name)
    {
        var page = Catalogue.Page(name)!;
        PageExamples.Receive(page, name, yaml => DepartmentFiles.With(yaml).Report());

        var examples = PageExamples.Of(page);
        Assert.NotEmpty(examples.Flagged);
        Assert.All(examples.Flagged, example =>
        {
            var files = DepartmentFiles.With(example.Yaml);
            Assert.Equal(example.Report, files.Report());
            Assert.Equal(files.Marks.Order(), files.Run().Findings.Select(f => (f.Place.File, f.Place.Line, f.Check)).Order());
            Assert.Contains(files.Run().Findings, f => f.Check == name);
        });
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_a_page_shows_as_fine_is_fine(string name) =>
        Assert.All(PageExamples.Of(Catalogue.Page(name)!).Fine, yaml => Assert.Equal("", DepartmentFiles.With(yaml).Report()));

    [Theory]
    [MemberData(nameof(Names))]
    public void A_mistake_planted_in_the_sample_school_brings_its_own_finding_and_no_other(string name)
    {
        var planting = Assert.Single(Planting.Of(Catalogue.Page(name)!));
        var planted = new DepartmentFiles(planting.In(DepartmentFiles.Sample.Files));
        Assert.Equal([name], planted.Run().Findings.Select(f => f.Check));
    }

    [Fact]
    public void The_sample_school_and_its_productions_are_clean()
    {
        Assert.Equal("", DepartmentFiles.Sample.Report());
        Assert.All(DepartmentFiles.Sample.Productions, name => Assert.Equal("", DepartmentFiles.Sample.Run(name).Report()));
    }

    [Fact]
    public void Every_unit_that_was_bought_is_on_the_shelf_or_in_one_production_and_that_one_counts_it_too()
    {
        var book = DepartmentFiles.Sample.Run().Book;
        var lot = Assert.Single(book.Shelf);
        Assert.Equal((12, 4, 8), (lot.Bought, lot.OnShelf, lot.Out));
        Assert.All(book.Shares, share => Assert.Equal(share.UnitsByBook[lot.Lot.Name.Value], lot.Units.Count(u => u.Holder == share.Name)));
    }

    [Fact]
    public void What_a_production_takes_from_its_school_has_its_place_in_the_schools_file()
    {
        var ferry = Reading.ProductionReader.Read(DepartmentFiles.Sample.Of("first-year/ferry")).Production!;
        Assert.Equal("../../school.yaml", ferry.BodyNamed("B1")!.Name.Place.File);
        Assert.Equal("Brackwater Film Lab", ferry.Lab!.Name!.Value);
        Assert.Equal("EUR", ferry.Rates!.Currency.Value);
        Assert.Equal(["B1"], ferry.Bodies.Select(b => b.Name.Value));
        Assert.Equal(["ada"], ferry.People.Select(p => p.Id.Value));
        Assert.Equal(new DateOnly(2026, 10, 12), ferry.Loan!.Due!.Value);
    }
}
