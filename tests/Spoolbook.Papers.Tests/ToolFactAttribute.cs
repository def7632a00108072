using System.Diagnostics;

namespace Spoolbook.Papers.Tests;

/// <summary>
/// A test that an outside program judges. Where the program is missing it is skipped and says so; with
/// SPOOLBOOK_REQUIRE_TOOLS=1 it runs all the same, and fails.
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ToolFactAttribute : FactAttribute
{
    public ToolFactAttribute(string tool)
    {
        bool required = Environment.GetEnvironmentVariable("SPOOLBOOK_REQUIRE_TOOLS") == "1";
        if (!required && !Tools.IsInstalled(tool)) Skip = $"'{tool}' is not installed here.";
    }
}

/// <summary>The same for a theory.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ToolTheoryAttribute : TheoryAttribute
{
    public ToolTheoryAttribute(string tool) => Skip = new ToolFactAttribute(tool).Skip;
}

/// <summary>Runs outside programs.</summary>
static class Tools
{
    public static bool IsInstalled(string tool) =>
        tool.StartsWith('/') ? File.Exists(tool)
            : (Environment.GetEnvironmentVariable("PATH") ?? "").Split(':').Any(folder => File.Exists(Path.Combine(folder, tool)));

    /// <summary>What the program printed, on both its outputs, and how it ended.</summary>
    public static (int Status, string Output) Run(string tool, params IEnumerable<string> arguments)
    {
        var start = new ProcessStartInfo(tool, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output + errors.Result);
    }
}
