using System.Text.Json;
using System.Text.RegularExpressions;

namespace Spoolbook.Tests;

/// <summary>The trade's sums from the command line.</summary>
public sealed class ReckonTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Theory]
    // A26 H: an article citing M. Lustig, 1980: 83 ft 38 fr of 16 mm is 209 ft 14 fr of 35 mm.
    [InlineData("length 83+38 --from 16mm --to 35mm --at 24", "length", "209+14", 209.875)]
    // A26 H, by its frames: 83 × 40 + 38.
    [InlineData("length 83+38", "frames", "3358", 3358)]
    // 100 ft × 40 / 24 s (SMPTE and handbooks: 36 ft a minute in 16 mm at 24).
    [InlineData("time 100ft --at 24", "in the camera", "2:46.67", 4000 / 24.0)]
    [InlineData("time 100ft --at 48 --projected-at 24 --gauge 16mm", "in the camera", "1:23.33", 4000 / 48.0)]
    [InlineData("time 100ft --at 48 --projected-at 24", "looks", "0.5", 0.5)]
    // E3 H: 133° at 24 with a finder that takes 20 % (the split is I. Vásárhelyi's, 1965).
    [InlineData("exposure --speed 24 --angle 133 --finder-loss 20%", "time to meter for", "1/81 s", 0.8 * 133 / (360 * 24))]
    // D2 H: B. Brown, Cinematography, table 10.6.
    [InlineData("exposure --angle 172.8deg", "time", "1/50 s", 1 / 50.0)]
    // A quarter closed is counted half a stop, half closed one: common practice.
    [InlineData("exposure --shutter quarter", "from what the meter gives", "-0.5", -0.5)]
    [InlineData("exposure --shutter half", "from what the meter gives", "-1", -1.0)]
    // By its opening alone: log2 3/4.
    [InlineData("exposure --shutter 3/4", "from what the meter gives", "-0.42", -0.41503749927884)]
    // D31: 0.6 / log10 2; D40: log2 4; D34 H: a lecture's slides on filters, 85 is 2/3.
    [InlineData("exposure --nd 0.6", "from what the meter gives", "-1.99", -1.99315685693242)]
    [InlineData("exposure --factor 4", "from what the meter gives", "-2", -2.0)]
    [InlineData("exposure --filter 85", "from what the meter gives", "-0.67", -2 / 3.0)]
    // D41 H: factors multiply, so that stops add (Eastman Kodak E-142, p. 3).
    [InlineData("exposure --factor 4 --factor 2 --nd 0 --filter 85 --filter 85C", "from what the meter gives", "-4", -4.0)]
    // Life size costs two stops: from memory.
    [InlineData("exposure --extension 25mm --lens 25mm", "from what the meter gives", "-2", -2.0)]
    [InlineData("exposure --timed 2s", "time", "2 s", 2.0)]
    [InlineData("exposure --push -1", "from what the meter gives", "-1", -1.0)]
    // D45 H: 500 rated 1000 is one stop less light on the film.
    [InlineData("exposure --ei 500 --rated 1000", "from what the meter gives", "+1", 1.0)]
    // D12 H: Eastman Kodak TI2082, §7: dark colours take half a stop more.
    [InlineData("exposure --subject dark", "from what the meter gives", "-0.5", -0.5)]
    // F14 M: Eastman Kodak F-4017, from memory: 1 s open 1, 10 s open 2; half way in log time at 3.16 s. 2 s are log2 96 over 1/48.
    [InlineData("exposure --timed 10s --reciprocity 1s:1 --reciprocity 10s:2", "from what the meter gives", "+6.91", 6.90689059560852)]
    [InlineData("exposure --timed 1s --reciprocity 1s:1", "from what the meter gives", "+4.58", 4.58496250072116)]
    // F14 M, as corrected times: the maker has 50 s for 10 s.
    [InlineData("exposure --timed 10s --reciprocity 1s:2s --reciprocity 10s:50s", "or held open, lens as metered", "50 s", 50)]
    // t^p: 10^1.3 (the form from memory, the figure computed).
    [InlineData("exposure --timed 10s --reciprocity-exponent 1.3", "or held open, lens as metered", "20 s", 19.9526)]
    [InlineData("exposure --timed 20s --reciprocity 1s:0 --reciprocity 10s:1", "reciprocity failure", "at least 1", 1)]
    [InlineData("exposure --timed 0.34s", "time", "1/3 s", 0.34)]
    [InlineData("lapse --event 4s --interval 1s --transport 0.66s", "longest exposure", "1/3", 0.34)]
    // G8 M: Eastman Kodak AA-26, as quoted.
    [InlineData("depth --lens 50mm --stop 8 --focus inf --blur 1/30deg --units metres", "hyperfocal", "10.79", 10.793)]
    [InlineData("length 100ft --units metres", "metres", "30.48", 30.48)]
    // D21, D26: 16 at one over the index in bright sun (Eastman Kodak F-4017), here at 1/50 s and an index of 50.
    [InlineData("exposure --ei 50 --daylight bright-sun --angle 172.8", "stop to set", "16", 16.0)]
    // F9 H: J. Carucci: 3 h in 30 s at 30 is a frame in 12 s.
    [InlineData("lapse --event 3h --screen 30s --projected-at 30", "interval", "12", 12.0)]
    [InlineData("lapse --event 3h --frames 900 --projected-at 30", "on the screen", "30", 30.0)]
    // F10 H: an hour at a frame in 10 s is 360 frames, 15 s at 24.
    [InlineData("lapse --event 1h --interval 10s", "on the screen", "15", 15.0)]
    [InlineData("lapse --event 1h --interval 10s --transport 2s", "longest exposure", "8", 8.0)]
    [InlineData("depth --lens 25mm --stop 4 --focus 6ft --units metres --circle 0.015mm", "hyperfocal", "10.44", 10.441666666666666)]
    // π (61² − 31.75²) / (4 × 0.1524 mm).
    [InlineData("spool --diameter 61mm --units metres", "left", "13.98", 13.98)]
    [InlineData("spool --diameter 6.1cm --core 1.25in --thickness 0.006in --gauge 16mm --at 24", "runs", "1:16", 1835 / 24.0)]
    public void A_sum_is_answered(string line, string label, string value, double number)
    {
        var answer = Answers(line).Single(a => a.GetProperty("label").GetString() == label);

        Assert.Equal(value, answer.GetProperty("value").GetString());
        Assert.Equal(number, answer.GetProperty("number").GetDouble(), 0.005);
    }

    [Theory]
    // D10 H: Eastman Kodak TI2082, footcandles for EI 500 at 24 and 170°.
    [InlineData(5, "1.4")]
    [InlineData(10, "2")]
    [InlineData(20, "2.8")]
    [InlineData(40, "4")]
    [InlineData(80, "5.6")]
    [InlineData(160, "8")]
    [InlineData(320, "11")]
    [InlineData(640, "16")]
    public void Footcandles_give_the_stop_of_the_stocks_own_table(int footcandles, string stop) =>
        Assert.Equal(
            stop,
            Answers($"exposure --ei 500 --incident {footcandles}fc --speed 24 --angle 170")[0].GetProperty("value").GetString()
        );

    [Theory]
    [InlineData("exposure --ei 100 --reflected 3200cd/m2 --k 12.5", "--ei 100 --daylight bright-sun")]
    [InlineData("exposure --ei 500 --incident 80fc", "--ei 500 --incident 861.112833lx --c 25fc")]
    public void Two_ways_to_write_a_light_give_one_stop(string one, string other) =>
        Assert.Equal(Answers(one)[1].GetProperty("value").GetString(), Answers("exposure " + other)[1].GetProperty("value").GetString());

    [Fact]
    public void A_table_shows_the_answers_and_how_they_came_about()
    {
        var (status, printed, error) = Run("exposure --speed 24 --angle 133 --finder-loss 20% --filter 85 --ei 500 --incident 80fc");

        Assert.Equal((0, ""), (status, error));
        Assert.Equal(
            """
            Exposure

              stop to set                2.8 2/3  nearest third
              in tenths                  2.8+0.6
              from what the meter gives  -1.43    stops
              time                       1/65 s
              time to meter for          1/81 s

            How it is worked out

              index            500      EI
              incident light   861.1    lx, with C = 269.1 lx s
              the meter gives  5.6+0.1  at 1/48 s
              speed            0        stops: log2 (24 / 24 frames a second)
              shutter          -0.44    stops: log2 (133° / 180°)
              finder           -0.32    stops: log2 0.8, the part that reaches the film
              filter 85        -0.67    stops: as tabled
              sum              -1.43    stops

            """.ReplaceLineEndings("\n"),
            printed
        );
    }

    [Fact]
    public void The_page_about_sums_shows_what_is_printed()
    {
        var readme = File.ReadAllText(Path.Combine(Repository.Root, "src", "Spoolbook", "RECKON.md"));
        const string Asked = "$ spoolbook reckon ";
        var line = readme.Split('\n').Single(text => text.StartsWith(Asked, StringComparison.Ordinal));

        Assert.Contains($"{line}\n{Run(line[Asked.Length..]).Out}```", readme, StringComparison.Ordinal);
    }

    [Fact]
    public void Colour_changes_no_column()
    {
        const string Line = "depth --lens 25mm --stop 4 --focus 6ft";
        using var output = new StringWriter { NewLine = "\n" };
        SpoolbookApp.Run(
            ["reckon", .. Line.Split(' ')],
            new CommandEnvironment(output, TextWriter.Null, _bench.Folder, Workbench.Made, Colour: true, Width: 100)
        );

        Assert.Contains("\u001b[1m", output.ToString(), StringComparison.Ordinal);
        Assert.Equal(Run(Line).Out, Regex.Replace(output.ToString(), "\u001b\\[[0-9;]*m", ""));
    }

    [Fact]
    public void Without_light_there_are_times_and_stops_and_no_stop_to_set() =>
        Assert.Equal(
            ["from what the meter gives", "time"],
            Answers("exposure --speed 16 --angle 170").Select(answer => answer.GetProperty("label").GetString())
        );

    [Fact]
    public void A_closed_shutter_has_no_number_for_a_program() =>
        Assert.All(Answers("exposure --shutter closed"), answer =>
            Assert.Equal(JsonValueKind.Null, answer.GetProperty("number").ValueKind)
        );

    [Fact]
    public void What_programs_get_is_what_people_get()
    {
        var (_, printed, _) = Run("depth --lens 25mm --stop 4 --focus inf --json");
        using var json = JsonDocument.Parse(printed);

        Assert.Equal(["spoolbook", "title", "answers", "steps"], json.RootElement.EnumerateObject().Select(part => part.Name));
        Assert.All(json.RootElement.GetProperty("steps").EnumerateArray(), step =>
            Assert.Equal(["label", "value", "unit", "number"], step.EnumerateObject().Select(part => part.Name))
        );
    }

    [Theory]
    [InlineData("exposure --ei 500 --incident 80", "--incident: '80' has no unit: write 80fc (footcandles) or 860lx")]
    [InlineData("exposure --ei 500 --incident 80ft", "80fc (footcandles) or 860lx")]
    [InlineData("exposure --ei 500 --incident 0fc", "80fc (footcandles) or 860lx")]
    [InlineData("exposure --ei 100 --reflected 3200lx", "3200cd/m2")]
    [InlineData("exposure --incident 80fc", "add --ei 500")]
    [InlineData("exposure --rated 400", "add --ei 500")]
    [InlineData("exposure --ei 500 --incident 80fc --metered 5.6", "--incident and --metered are two lights")]
    [InlineData("exposure --metered 5.6 --k 14", "--reflected 3200cd/m2")]
    [InlineData("exposure --metered 5.6 --c 250lx", "--incident 80fc")]
    [InlineData("exposure --metered wide", "a split")]
    [InlineData("exposure --angle 361", "at most 360")]
    [InlineData("exposure --finder-loss 100%", "write 20%")]
    [InlineData("exposure --filter 99Z", "write one of 80A, 80B")]
    [InlineData("exposure --filter 85 --filter 99Z", "'99Z'")]
    [InlineData("exposure --shutter wide", "the part left open, 3/4")]
    [InlineData("exposure --timed 2s --speed 24", "--timed")]
    [InlineData("exposure --timed 0s", "write 2s")]
    [InlineData("exposure --extension 5mm", "--lens 25mm")]
    [InlineData("exposure --nd 0.6 --nd -1", "write 0.6")]
    [InlineData("exposure --push much", "--push: ")]
    [InlineData("exposure --subject pink", "pastel")]
    [InlineData("exposure --reciprocity 10s", "write 10s:1")]
    [InlineData("exposure --reciprocity 10s:5s", "write 10s:50s")]
    [InlineData("exposure --reciprocity-exponent 0.9", "write 1.3")]
    [InlineData("exposure --reciprocity 1s:0 --reciprocity-exponent 1.3", "leave one of them out")]
    [InlineData("exposure --reciprocity 10s:2 --reciprocity 1s:1", "by rising time")]
    [InlineData("depth --lens 25mm --stop 4 --focus 6ft --circle 0.015mm --blur 1/30deg", "leave one of them out")]
    [InlineData("depth --lens 25mm --stop 4 --focus 6ft --blur 90", "below 90 degrees")]
    [InlineData("exposure --daylight dusk", "bright-sun")]
    [InlineData("length 83 --to 35mm", "write 31+12 (feet + frames)")]
    [InlineData("length 83+40", "40 frames make a foot of 16mm")]
    [InlineData("length 83+38 --to 17mm", "write one of '8mm'")]
    [InlineData("time 100ft --at 0", "--at: '0' is no speed")]
    [InlineData("depth --lens 25 --stop 4 --focus 6ft", "--lens: '25' has no unit: write 25mm")]
    [InlineData("depth --lens 25mm --stop 4 --focus 6", "write 6ft, 5ft 6in, 1.8m")]
    [InlineData("depth --lens 25mm --stop 4 --focus 99mm", "here 100mm")]
    [InlineData("depth --lens 25mm --stop 4", "--focus")]
    [InlineData("depth --lens 25mm --stop 4 --focus 6ft --units yards", "yards")]
    [InlineData("spool --diameter 61", "write 25mm, 6.1cm or 2in")]
    [InlineData("spool --diameter 20mm", "--core")]
    [InlineData("lapse --event 3", "write 12s, 90min or 3h")]
    [InlineData("lapse --event 3h", "give two of these three")]
    [InlineData("lapse --event 3h --frames 1.5", "frames are whole")]
    [InlineData("lapse --event 999999999999999h --interval 1/999999999999s", "more film than there can be")]
    public void A_wrong_figure_is_answered_with_the_right_forms(string line, string says)
    {
        var (status, printed, error) = Run(line);

        Assert.Equal((2, ""), (status, printed));
        Assert.Contains(says, error, StringComparison.Ordinal);
        Assert.Contains($"Try: spoolbook reckon {line.Split(' ')[0]} --help", error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Asked_for_no_sum_the_command_lists_them() => Assert.Equal(2, _bench.Run("reckon").Status);

    JsonElement[] Answers(string line)
    {
        var (status, printed, error) = Run(line + " --json");
        Assert.Equal((0, ""), (status, error));
        using var json = JsonDocument.Parse(printed);
        return [.. json.RootElement.GetProperty("answers").EnumerateArray().Select(answer => answer.Clone())];
    }

    (int Status, string Out, string Error) Run(string line) => _bench.Run(["reckon", .. line.Split(' ')]);
}
