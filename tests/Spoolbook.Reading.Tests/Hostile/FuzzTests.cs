using CsCheck;
using Spoolbook.Reading.Files;
using Spoolbook.Reading.Tests.Sheets;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Tests.Hostile;

public sealed class FuzzTests
{
    [Fact]
    public void A_damaged_roll_is_read_or_flagged_and_never_breaks_the_reader() => Damage("rolls/r01.yaml");

    [Fact]
    public void A_damaged_production_file_is_read_or_flagged_and_never_breaks_the_reader() => Damage("production.yaml");

    [Fact]
    public void A_damaged_kit_is_read_or_flagged_and_never_breaks_the_reader() => Damage("kit.yaml");

    static void Damage(string name)
    {
        var text = SmallProduction.Files.Single(f => f.Name == name).Text;
        Mutation
            .Of(text)
            .Sample(
                damaged =>
                {
                    var result = ProductionReader.Read(SmallProduction.With(name, damaged));
                    foreach (var finding in result.Findings)
                    {
                        AssertFit(finding, result.Sources);
                    }
                },
                iter: 2000,
                print: t => t
            );
    }

    static void AssertFit(Finding finding, SourceTexts sources)
    {
        AssertInside(finding.Place, sources);
        Assert.All(finding.Others, other => AssertInside(other.Place, sources));
        Assert.Contains(finding.Check, SheetChecks.All);
        Assert.NotEmpty(finding.Message);
        Assert.DoesNotContain(finding.Message, char.IsControl);
        Assert.NotEmpty(finding.Help);
    }

    static void AssertInside(Place place, SourceTexts sources)
    {
        if (sources.Line(place.File, place.Line) is not { } line)
        {
            Assert.Equal((1, 1, 0), (place.Line, place.Column, place.Length));
            return;
        }

        Assert.InRange(place.Column, 1, line.Length + 1);
        Assert.InRange(place.Length, 0, line.Length + 1 - place.Column);
    }
}
