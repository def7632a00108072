using Spoolbook.Reading.Tests.Sheets;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Tests.Checks;

/// <summary>The help for a value that cannot be read is that value written right, not an example of another.</summary>
public sealed class RewrittenValueTests
{
    [Theory]
    [InlineData("to: 14+10", "to: 31:12", "Write `31+12` or `1872s`.")]
    [InlineData("to: 14+10", "to: 1:30:00", "Write `5400s`.")]
    [InlineData("to: 14+10", "to: 32", "Write `32ft` or `32+00`.")]
    [InlineData("to: 14+10", "to: 32.5", "Write `32.5ft`.")]
    [InlineData("to: 14+10", "to: 31-12", "Write `31+12`.")]
    [InlineData("to: 14+10", "to: 31ft12", "Write `31+12`.")]
    [InlineData("to: 14+10", "to: 31+12fr", "Write `31+12`.")]
    [InlineData("to: 14+10", "to: 14+1O", "Write `14+10`.")]
    [InlineData("to: 14+10", "to: 31+45", "Write `32+05`.")] // 40 frames a foot in 16 mm
    [InlineData("to: 14+10", "to: 31+", "Write `31+00`.")]
    [InlineData("to: 14+10", "to: '31,5ft'", "Write `31.5ft`.")]
    [InlineData("to: 14+10", "to: 2m30s", "Write `150s`.")]
    [InlineData("to: 14+10", "to: 26 1/2", "Write `26.5ft`.")]
    [InlineData("to: 14+10", "to: 26 3/8 ft", "Write `26.375ft`.")]
    [InlineData("frames: 96fr", "frames: 96", "Write `96fr` or `96ft`.")]
    [InlineData("mark: good", "mark: good, fade-out: 48", "Write `48fr` or `48ft`.")]
    [InlineData("on: 2026-10-04 16:45", "on: 06.11.2026 08:30", "Write `2026-11-06 08:30`.")]
    [InlineData("on: 2026-10-04 16:45", "on: 4.10.26 16:45", "Write `2026-10-04 16:45`.")]
    [InlineData("on: 2026-10-04 16:45", "on: 10/04/2026 16:45", "Write `2026-04-10 16:45` or `2026-10-04 16:45`.")]
    [InlineData("on: 2026-10-04 16:45", "on: 10/14/2026 4:45 pm", "Write `2026-10-14 16:45`.")]
    [InlineData("on: 2026-10-04 16:45", "on: 2026-10-4 16.45", "Write `2026-10-04 16:45`.")]
    [InlineData("mark: good", "mark: good, on: 4 Oct 2026", "Write `2026-10-04`.")]
    [InlineData("mark: good", "mark: good, on: 2026-10-04 09:10", "Write `2026-10-04`.")]
    [InlineData("at: 09:30", "at: 9.30", "Write `09:30`.")]
    [InlineData("at: 09:30", "at: 0930", "Write `09:30`.")]
    [InlineData("at: 09:30", "at: 9:30 pm", "Write `21:30`.")]
    [InlineData("at: 09:30", "at: 24:10", "Write `00:10`.")]
    [InlineData("mark: good", "mark: good, interval: 1:30", "Write `90s`.")]
    [InlineData("mark: good", "mark: good, interval: 5 secs", "Write `5s`.")]
    [InlineData("mark: good", "mark: good, interval: 2 mins", "Write `2min`.")]
    [InlineData("focus: 6ft", "focus: 6", "Write `6ft` or `6m`.")]
    [InlineData("focus: 6ft", "focus: 6 1/2ft", "Write `6.5ft`.")]
    [InlineData("focus: 6ft", "focus: 6 1/4", "Write `6.25ft`.")]
    [InlineData("focus: 6ft", "focus: 5'6", "Write `5ft 6in`.")]
    [InlineData("focus: 6ft", "focus: 2.5 METERS", "Write `2.5m`.")]
    [InlineData("speed-after: 24", "speed-after: 24 f/s", "Write `24`.")]
    public void A_slip_is_answered_with_the_value_written_right(string piece, string instead, string help) =>
        Assert.Equal(help, Only(piece, instead).Help);

    [Theory]
    [InlineData("to: 14+10", "to: a few feet")]
    [InlineData("at: 09:30", "at: 25:30")]
    [InlineData("on: 2026-10-04 16:45", "on: 2026-02-30 16:45")]
    [InlineData("on: 2026-10-04 16:45", "on: 31.02.2026 16:45")]
    public void A_slip_without_a_good_guess_gets_no_made_up_value(string piece, string instead) =>
        Assert.DoesNotContain("Write `2026-02", Only(piece, instead).Help, StringComparison.Ordinal);

    [Theory]
    [InlineData("lens: 25mm, stop", "lens:25mm, stop", "sheet/unknown-key", "Put a space after the colon: write `lens: 25mm`.")]
    [InlineData("lens: 25mm, stop: 5.6", "lens: 25mm stop: 5.6", "sheet/not-yaml", "Write `, stop:`.")]
    [InlineData("mark: good, at: 09:30}", "mark: good, note: slate #3}", "sheet/not-yaml", "Write it in double quotes: `\"slate #3\"`.")]
    [InlineData("mark: good,", "note: 'Dog's ear', mark: good,", "sheet/not-yaml", "Write it in double quotes: `\"Dog's ear\"`.")]
    public void A_slip_in_YAML_is_named_for_what_it_is(string piece, string instead, string check, string help)
    {
        var findings = Read(SmallProduction.Roll.Replace(piece, instead, StringComparison.Ordinal));

        Assert.Contains(findings, f => f.Check == check && f.Help == help);
    }

    [Fact]
    public void A_colon_in_a_text_is_not_a_missing_comma() =>
        Assert.Contains(
            Read(SmallProduction.Roll.Replace("mark: good,", "note: Wind on: slow, mark: good,", StringComparison.Ordinal)),
            f => f.Help == "Write it in double quotes: `\"Wind on: slow\"`."
        );

    [Fact]
    public void All_slips_of_a_file_are_found_in_one_run()
    {
        var roll = SmallProduction
            .Roll.Replace("speed-after: 24}", "speed-after: 24", StringComparison.Ordinal)
            .Replace("lens: 25mm, stop: 5.6", "lens: 25mm stop: 5.6", StringComparison.Ordinal)
            .Replace("tail: 2+00", "tail: 2+00, note: it's: late", StringComparison.Ordinal);

        Assert.Equal([6, 9, 12], Read(roll).Where(f => f.Check == "sheet/not-yaml").Select(f => f.Place.Line));
    }

    static Finding Only(string piece, string instead)
    {
        Assert.Contains(piece, SmallProduction.Roll, StringComparison.Ordinal);
        return Assert.Single(Read(SmallProduction.Roll.Replace(piece, instead, StringComparison.Ordinal)));
    }

    static IEnumerable<Finding> Read(string roll) =>
        ProductionReader.Read(SmallProduction.With("rolls/r01.yaml", roll)).Findings.Where(f => f.Place.File == "rolls/r01.yaml");
}
