using System.Diagnostics;
using Spoolbook.Completing;

namespace Spoolbook.Acceptance;

/// <summary>A press of the tabulator in a shell: what is offered is what fits, out of the commands and out of the production.</summary>
public sealed class ShellCompletionTests : IDisposable
{
    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Theory]
    [InlineData("check completion", "c")]
    [InlineData("--draft --dry-run", "make", "--dr")]
    [InlineData("json sarif github text", "check", "--format", "")]
    [InlineData("--format=json", "check", "--format=js")]
    [InlineData("--format=json", "check", "--format", "=", "js")]
    [InlineData("exposure", "reckon", "e")]
    [InlineData("--projected-at", "reckon", "time", "100ft", "--at", "16", "--p")]
    [InlineData("metres", "reckon", "length", "3ft", "--units", "m")]
    [InlineData("lab-order", "make", "--only", "lab")]
    [InlineData("status stock", "schema", "st")]
    [InlineData("", "explain", "load/", "?")]
    [InlineData("bash", "completion", "b")]
    [InlineData(":files", "make", "")]
    [InlineData(":files", "make", "--out", "")]
    [InlineData(":files", "make", "ferry", "")]
    [InlineData("", "reckon", "time", "100ft", "--at", "")]
    public void The_program_offers_what_fits(string offered, params string[] words)
    {
        var asked = words is [.., "?"] ? words[..^1] : words;
        var (status, said, error) = _bench.Run(["complete", "--", .. asked]);

        var offers = said.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split('\t')[0]).Order().ToList();
        Assert.Equal((0, ""), (status, error));
        if (words is [.., "?"])
        {
            Assert.NotEmpty(offers);
            Assert.All(offers, o => Assert.StartsWith(asked[^1], o, StringComparison.Ordinal));
        }
        else
        {
            Assert.Equal(offered.Split(' ', StringSplitOptions.RemoveEmptyEntries).Order(), offers);
        }
    }

    [Theory]
    [InlineData("25mm", "log", "1A/4", "--in", "ferry", "2")]
    [InlineData("R00: R04:", "log", "--in", "ferry", "R0")]
    [InlineData("ines", "unload", "--in", "ferry", "by", "in")]
    [InlineData("camera-report-R06", "make", "--in", "ferry", "--only", "camera-report-R06")]
    public void Names_come_out_of_the_production(string offered, params string[] words)
    {
        var production = _bench.CopyOf(Repository.Sample, "ferry");
        foreach (var roll in (string[])["r00", "r04"])
        {
            var file = Path.Combine(production, "rolls", roll + ".yaml");
            File.WriteAllLines(file, File.ReadAllLines(file).TakeWhile(l => !l.StartsWith("unload:", StringComparison.Ordinal)));
        }

        var (_, said, _) = _bench.Run(["complete", "--", .. words]);

        Assert.Equal(offered.Split(' '), said.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split('\t')[0]));
    }

    [Fact]
    public void Where_there_is_no_production_nothing_is_offered_and_nothing_is_said()
    {
        Assert.Equal((0, "", ""), _bench.Run("complete", "--", "log", "1"));
    }

    [ToolFact("bash")]
    public void Bash_completes()
    {
        Assert.Equal(["check", "completion"], Bash("spoolbook c", "spoolbook", "c"));
        Assert.Equal(["json"], Bash("spoolbook check --format=js", "spoolbook", "check", "--format", "=", "js"));
        Assert.Equal([@"run\ off"], Bash("spoolbook log run", "spoolbook", "log", "run"));
    }

    [ToolFact("zsh")]
    public void Zsh_completes()
    {
        // In place of zsh's own functions, which need a terminal, some that print what they are given.
        var script = $$"""
            compdef() { : }
            _describe() { print -l -- "${(@P)3}" }
            _files() { print -- FILES }
            source {{Script("zsh")}}
            words=(spoolbook check --st) CURRENT=3
            _spoolbook
            words=(spoolbook make '') CURRENT=3
            _spoolbook
            """;

        Assert.Equal(["--strict:Count a warning as an error", "FILES"], Shell("zsh", "-f", "-c", script));
    }

    [ToolFact("fish")]
    public void Fish_completes()
    {
        var offered = Shell("fish", "--no-config", "-c", $"source {Script("fish")}; complete -C 'spoolbook schema st'");

        Assert.Equal(["status", "stock"], offered.Order());
    }

    string[] Bash(string line, params string[] words)
    {
        var script = $$"""
            source {{Script("bash")}}
            COMP_LINE='{{line}}' COMP_POINT={{line.Length}} COMP_WORDS=({{string.Join(' ', words.Select(w => $"'{w}'"))}})
            COMP_CWORD={{words.Length - 1}}
            _spoolbook
            printf '%s\n' "${COMPREPLY[@]}"
            """;
        return Shell("bash", "--norc", "-c", script);
    }

    string Script(string shell)
    {
        File.WriteAllText(_bench.PathOf("script"), ShellScripts.Of(shell));
        return _bench.PathOf("script");
    }

    // With the program on the path, under the name that a user types, in the sample.
    string[] Shell(string shell, params string[] arguments)
    {
        var program = _bench.PathOf("spoolbook");
        var dll = Path.Combine(AppContext.BaseDirectory, "spoolbook.dll");
        File.WriteAllText(program, $"#!/bin/sh\nexec dotnet '{dll}' \"$@\"\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(program, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }

        var start = new ProcessStartInfo(shell, arguments) { RedirectStandardOutput = true, WorkingDirectory = Repository.Sample };
        start.Environment["PATH"] = $"{_bench.Folder}:{Environment.GetEnvironmentVariable("PATH")}";
        start.Environment["HOME"] = _bench.Folder;
        using var process = Process.Start(start)!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return said.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }
}
