using System.Diagnostics;

namespace Spoolbook.TestSupport;

/// <summary>Outside programs that judge our work.</summary>
static class Tools
{
    // Where npm puts what it installs for everybody, on Debian and elsewhere.
    static readonly string[] _npm = ["/usr/lib/node_modules", "/usr/local/lib/node_modules"];

    const string Npm = "npm:";

    /// <summary>Whether a program, a file that a program needs, or a file of an npm package is on this machine.</summary>
    public static bool IsInstalled(string tool) =>
        tool.StartsWith('/') ? File.Exists(tool)
        : tool.StartsWith(Npm, StringComparison.Ordinal) ? FileOfPackage(tool) is not null
        : (Environment.GetEnvironmentVariable("PATH") ?? "")
            .Split(Path.PathSeparator)
            .Any(folder => folder.Length > 0 && File.Exists(Path.Combine(folder, tool)));

    /// <summary>The path of a file of an npm package, written <c>npm:package/file</c>; null where it is not installed.</summary>
    public static string? FileOfPackage(string file) =>
        _npm.Select(folder => Path.Combine(folder, file[Npm.Length..])).FirstOrDefault(File.Exists);

    /// <summary>Runs a program; returns its exit status and what it printed on both outputs.</summary>
    public static (int Status, string Output) Run(string tool, params IEnumerable<string> arguments)
    {
        var start = new ProcessStartInfo(tool, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output + errors.Result);
    }

    /// <summary>The program's answers, line by line, to lines of input.</summary>
    public static string[] Ask(string tool, IEnumerable<string> arguments, IEnumerable<string> lines)
    {
        using var process = Process.Start(
            new ProcessStartInfo(tool, arguments) { RedirectStandardInput = true, RedirectStandardOutput = true }
        )!;
        // Writes and reads at the same time, or a long batch would fill both pipes and block.
        var asking = Task.Run(() =>
        {
            using var input = process.StandardInput;
            input.NewLine = "\n";
            foreach (var line in lines)
            {
                input.WriteLine(line);
            }
        });
        var answers = process.StandardOutput.ReadToEnd();
        asking.GetAwaiter().GetResult();
        process.WaitForExit();
        return answers.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }
}
