using System.Diagnostics;
using System.Globalization;

namespace Spoolbook.Film.Tests;

/// <summary>
/// GNU units, an oracle that is not our code. A batch of conversions goes through one process. Where the
/// program is not installed its tests are skipped with that reason; where SPOOLBOOK_REQUIRE_TOOLS is 1 they
/// fail instead.
/// </summary>
static class UnitsProgram
{
    /// <summary>What <c>units</c> makes of each conversion.</summary>
    public static double[] Answers(IReadOnlyList<(string Have, string Want)> conversions)
    {
        using var process = Process.Start(new ProcessStartInfo("units", ["--quiet", "--terse", "--output-format", "%.17g"])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;

        // Written beside the reading, or a long batch would fill both pipes and stand still.
        var asking = Task.Run(() => Ask(process, conversions));
        var answers = process.StandardOutput.ReadToEnd();
        asking.GetAwaiter().GetResult();
        process.WaitForExit();
        return [.. answers.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => double.Parse(line, CultureInfo.InvariantCulture))];
    }

    static void Ask(Process process, IReadOnlyList<(string Have, string Want)> conversions)
    {
        using var input = process.StandardInput;
        input.NewLine = "\n";
        foreach (var (have, want) in conversions)
        {
            input.WriteLine(have);
            input.WriteLine(want);
        }
    }
}

/// <summary>A test that needs GNU units.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class UnitsFactAttribute : FactAttribute
{
    public UnitsFactAttribute()
    {
        if (!InstalledProgram.IsRequired && !InstalledProgram.IsInstalled("units"))
        {
            Skip = InstalledProgram.WhySkipped("GNU units");
        }
    }
}

/// <summary>Whether an oracle stands on the machine.</summary>
static class InstalledProgram
{
    public static bool IsRequired => Environment.GetEnvironmentVariable("SPOOLBOOK_REQUIRE_TOOLS") == "1";

    public static bool IsInstalled(string program) => (Environment.GetEnvironmentVariable("PATH") ?? "")
        .Split(Path.PathSeparator)
        .Any(folder => folder.Length > 0 && File.Exists(Path.Combine(folder, program)));

    public static string WhySkipped(string program) =>
        $"{program} is not installed; with SPOOLBOOK_REQUIRE_TOOLS=1 this test fails instead";
}
