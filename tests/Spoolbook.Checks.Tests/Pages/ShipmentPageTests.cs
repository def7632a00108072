namespace Spoolbook.Checks.Tests.Pages;

/// <summary>The pages of what is found before a consignment goes: examples laid over two productions with a can each.</summary>
public sealed class ShipmentPageTests
{
    public static TheoryData<string> Names => [.. CheckList.All.Where(c => c.Round == Round.Shipping).Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void What_a_page_shows_as_flagged_is_flagged_in_those_words_and_nothing_else_is(string name)
    {
        var page = Catalogue.Page(name)!;
        PageExamples.Receive(page, name, yaml => DepartmentFiles.With(yaml).ShippingReport());

        var examples = PageExamples.Of(page);
        Assert.NotEmpty(examples.Flagged);
        Assert.All(examples.Flagged, example =>
        {
            Assert.Contains(DepartmentFiles.With(example.Yaml).Shipping(), f => f.Check == name);
            Assert.Equal(example.Report, DepartmentFiles.With(example.Yaml).ShippingReport());
        });
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_a_page_shows_as_fine_is_fine(string name)
    {
        var fine = PageExamples.Of(Catalogue.Page(name)!).Fine;

        Assert.NotEmpty(fine);
        Assert.All(fine, yaml => Assert.Equal("", DepartmentFiles.With(yaml).ShippingReport()));
    }
}
