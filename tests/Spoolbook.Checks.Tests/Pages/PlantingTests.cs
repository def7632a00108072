using System.Collections.Immutable;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;
using Xunit.Abstractions;

namespace Spoolbook.Checks.Tests.Pages;

/// <summary>
/// One mistake at a time in the sample production brings exactly that check's finding, and changes none of the earlier
/// ones. An error silences later checks on what it makes doubtful, so a finding may disappear there, but none may be
/// added.
/// </summary>
public sealed class PlantingTests(ITestOutputHelper output)
{
    // The boxes of the paper sheet are added up from the same film, so they differ beside any mistake in its length or its marks.
    const string AddedUp = "length/totals-differ";

    static readonly ImmutableArray<Planting> All =
    [
        .. Catalogue.All.ExceptBy(CheckList.All.OfType<DepartmentCheck>().Select(c => c.Name), p => p.Name).SelectMany(p => Planting.Of(p)),
    ];

    static readonly WholeRun Untouched = WholeRun.Of(Planting.Untouched);

    static readonly Lazy<WholeRun> UntouchedPrinted = new(() => WholeRun.Printed(Planting.Untouched));

    public static TheoryData<string> Plantings => [.. All.Select(p => p.ToString())];

    [Theory]
    [MemberData(nameof(Plantings))]
    public void A_mistake_planted_in_the_sample_brings_its_own_finding_and_no_other(string planted)
    {
        var planting = All.Single(p => p.ToString() == planted);

        var isPrinted = CheckList.All.Single(c => c.Name == planting.Check).Round == Round.Printing;
        var run = isPrinted ? WholeRun.Printed(planting.Planted()) : WholeRun.Of(planting.Planted());
        var untouched = isPrinted ? UntouchedPrinted.Value : Untouched;

        var come = run
            .Findings.ExceptBy(untouched.Findings.Select(Said), Said)
            .Where(f => f.Check == planting.Check || f.Check != AddedUp)
            .ToArray();
        Assert.True(
            come.Length == 1 && come[0].Check == planting.Check,
            $"Expected one finding of {planting.Check}, and these came:\n{run.Listed()}"
        );
        if (planting.Files.All(f => f.StartsWith("rolls/", StringComparison.Ordinal)))
        {
            Assert.Contains(come[0].Others.Select(o => o.Place.File).Prepend(come[0].Place.File), planting.Files.Contains);
        }

        if (come[0].Level != Level.Error)
        {
            var gone = untouched.Findings.ExceptBy(run.Findings.Select(Said), Said);
            Assert.Equal("", string.Join('\n', gone.Select(Said)));
            Assert.Equal(untouched.Waived.Select(w => Said(w.Finding)), run.Waived.Select(w => Said(w.Finding)));
        }
    }

    [Fact]
    public void Every_check_says_how_to_plant_its_mistake_in_the_sample()
    {
        var without = Catalogue
            .All.Where(p => Planting.Of(p).IsEmpty)
            .Select(p => p.Name)
            .Except(CheckList.All.Where(c => c.Round is Round.Saying or Round.Shipping).Select(c => c.Name))
            .Except([Fault.Name, "paper/right-to-left"])
            .ToArray();

        Assert.True(
            without.Length == 0,
            "A page ends with \"## Try it in the sample\" and a diff: what to write in sample-production so that just this is found. "
                + "Without one: "
                + string.Join(", ", without)
        );
    }

    [Fact]
    public void At_least_sixty_mistakes_are_planted()
    {
        output.WriteLine(
            $"{All.Length} mistakes planted, of {Catalogue.All.Count()} checks in {Catalogue.All.DistinctBy(p => p.Group).Count()} groups"
        );

        Assert.True(All.Length >= 60);
    }

    [Fact]
    public void No_two_plantings_are_the_same() => Assert.Equal(All.Length, All.DistinctBy(p => p.Diff).Count());

    // A planted line moves the lines below it, which is no change.
    static string Said(Finding finding) => $"{finding.Place.File} {finding.Level} {finding.Check}: {finding.Message}";
}
