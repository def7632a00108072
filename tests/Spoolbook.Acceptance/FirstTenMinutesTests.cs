using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Spoolbook.Acceptance;

/// <summary>The tutorial is played as it is printed: its commands are run, and its answers are what they print.</summary>
public sealed partial class FirstTenMinutesTests : IDisposable
{
    const int Width = 80;

    readonly Bench _bench = new();
    readonly StringBuilder _page = new();
    string _folder;
    DateTime _now = new(2026, 10, 5, 8, 0, 0);

    public FirstTenMinutesTests() => _folder = _bench.Folder;

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void The_first_ten_minutes_go_as_the_page_says()
    {
        var lines = File.ReadAllLines(Path.Combine(Repository.Root, "src", "Spoolbook", "FIRST-TEN-MINUTES.md"));
        for (var at = 0; at < lines.Length; at++)
        {
            Append(lines[at]);
            if (Clock().Match(lines[at]) is { Success: true } clock)
            {
                _now = DateTime.Parse(clock.Groups[1].Value, CultureInfo.InvariantCulture);
            }
            else if (lines[at] is "```console" or "```yaml")
            {
                var end = Array.IndexOf(lines, "```", at);
                (lines[at] == "```console" ? (Action<string[]>)Run : Write)(lines[(at + 1)..end]);
                at = end - 1;
            }
        }

        ReferencePage.Holds(_page.ToString(), "Spoolbook", "FIRST-TEN-MINUTES.md", "reference-tutorial");
        Assert.True(File.Exists(Path.Combine(_folder, "papers", "lab-order.pdf")));
    }

    void Append(string line) => _page.Append(line).Append('\n');

    void Run(string[] block)
    {
        for (var at = 0; at < block.Length; at++)
        {
            if (!block[at].StartsWith("$ ", StringComparison.Ordinal))
            {
                continue;
            }

            var command = "";
            do
            {
                Append(block[at]);
                command += block[at].TrimEnd('\\');
            } while (block[at++].EndsWith('\\'));

            at--;
            Run(Word().Matches(command[2..]).Select(word => word.Value.Trim('"')).ToList());
        }
    }

    void Run(List<string> words)
    {
        if (words is ["cd", var folder])
        {
            _folder = Path.Combine(_folder, folder);
            return;
        }

        Assert.Equal("spoolbook", words[0]);
        using var output = new StringWriter { NewLine = "\n" };
        var around = new CommandEnvironment(output, output, _folder, Workbench.Made, Colour: false, Width) { Now = () => _now };
        SpoolbookApp.Run([.. words.Skip(1)], around);
        _page.Append(output);
    }

    // What the reader writes into a file: in the place of the line that shows how, or below the lines written last.
    void Write(string[] block)
    {
        var path = Path.Combine(_folder, block[0].TrimStart('#', ' '));
        var lines = File.ReadAllLines(path).ToList();
        var key = block[1].TrimStart().Split(':')[0];
        var place = lines.FindIndex(line => line.StartsWith($"  # {key}:", StringComparison.Ordinal));
        if (place >= 0)
        {
            lines.RemoveAt(place);
        }

        lines.InsertRange(
            place >= 0 ? place : lines.FindIndex(line => line.StartsWith("  return-to:", StringComparison.Ordinal)) + 1,
            block[1..]
        );
        File.WriteAllLines(path, lines);
        foreach (var line in block)
        {
            Append(line);
        }
    }

    [GeneratedRegex("^<!-- at (.*) -->$")]
    private static partial Regex Clock();

    [GeneratedRegex("\"[^\"]*\"|[^ ]+")]
    private static partial Regex Word();
}
