using Spoolbook.Checks.Running;

namespace Spoolbook.Checks.Tests.Pages;

public class PageTests
{
    // No known sheet breaks one of our checks. If there were one, it would be a mistake to fix. Lines are read elsewhere.
    public static TheoryData<string> Names =>
        [
            .. CheckList
                .All.Where(c => c.Round is not (Round.Saying or Round.Department or Round.Shipping))
                .Select(c => c.Name)
                .Except([Fault.Name, "paper/right-to-left"])
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Names))]
    public void What_a_page_shows_as_flagged_is_flagged_in_those_words_and_nothing_else_is(string name)
    {
        var page = Catalogue.Page(name)!;
        var examples = PageExamples.Of(page);

        // The findings are left beside the test's own files for scripts/accept-pages.
        PageExamples.Receive(page, name, yaml => Run(name, BaseProduction.With(yaml)).Report());

        Assert.NotEmpty(examples.Flagged);
        Assert.All(examples.Flagged, example =>
        {
            var files = BaseProduction.With(example.Yaml);
            var run = Run(name, files);
            Assert.Equal(example.Report, run.Report());
            if (!IsPrinted(name))
            {
                Assert.Equal(BaseProduction.Marks(files).Order(), run.Findings.Select(f => (f.Place.File, f.Place.Line, f.Check)).Order());
            }

            Assert.Contains(run.Findings, f => f.Check == name);
        });
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_a_page_shows_as_fine_is_fine(string name)
    {
        var examples = PageExamples.Of(Catalogue.Page(name)!);

        Assert.NotEmpty(examples.Fine);
        Assert.All(examples.Fine, yaml => Assert.Equal("", Run(name, BaseProduction.With(yaml)).Report()));
    }

    [Fact]
    public void The_production_that_examples_are_laid_over_is_clean() => Assert.Equal("", WholeRun.Of(BaseProduction.With("")).Report());

    static bool IsPrinted(string name) => CheckList.All.Single(c => c.Name == name).Round == Round.Printing;

    static WholeRun Run(string name, ExampleFiles files) => IsPrinted(name) ? WholeRun.Printed(files) : WholeRun.Of(files);
}
