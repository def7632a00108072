using System.Text;
using CsCheck;
using Spoolbook.Entry;
using Spoolbook.Importing;
using Spoolbook.Writing;

namespace Spoolbook.Acceptance.Importing;

/// <summary>How an import shows its changes, and how it writes: all files or none.</summary>
public class ChangedFilesTests
{
    [Fact]
    public void A_difference_put_on_the_old_text_gives_the_new_one()
    {
        var line = OneOf("a\n", "b\n", "c\n", "d\r\n", "\n");
        var text = Gen.Select(line.Array[0, 30], OneOf("", "end"), (lines, end) => string.Concat(lines) + end);
        Gen.Select(text, text)
            .Sample(
                (before, after) => Assert.Equal(after, Patched(before, [.. UnifiedDiff.Write(new ChangedFile("file", before, after))])),
                iter: 500,
                threads: 1
            );
    }

    [Fact]
    public void Files_are_replaced_all_or_none()
    {
        var folder = Directory.CreateTempSubdirectory("spoolbook-").FullName;
        try
        {
            var (one, two) = (Path.Combine(folder, "one"), Path.Combine(folder, "two"));
            File.WriteAllText(one, "1");
            File.WriteAllText(two, "2");

            Assert.ThrowsAny<IOException>(() => Put(folder, new("one", "1", "one"), new("two", "somebody changed it", "two")));
            Assert.Equal(("1", "2"), (File.ReadAllText(one), File.ReadAllText(two)));

            Assert.ThrowsAny<IOException>(() => Put(folder, new ChangedFile("one", "somebody changed it", "one")));
            Assert.Equal("1", File.ReadAllText(one));

            Put(folder, new("one", "1", "one"), new("two", "2", "two"));
            Assert.Equal(("one", "two"), (File.ReadAllText(one), File.ReadAllText(two)));
            Assert.Equal(2, Directory.GetFiles(folder).Length);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public async Task A_roll_is_there_and_whole_at_every_moment_of_its_change()
    {
        var folder = Directory.CreateTempSubdirectory("spoolbook-").FullName;
        try
        {
            var roll = Path.Combine(folder, "r05.yaml");
            var (old, changed) = (new string('a', 40_000), new string('b', 40_000));
            File.WriteAllText(roll, old);
            var (done, looks) = (false, 0);
            var looked = Task.Run(() =>
            {
                while (!Volatile.Read(ref done))
                {
                    Assert.Contains(File.ReadAllText(roll), (string[])[old, changed]);
                    Interlocked.Increment(ref looks);
                }
            });

            for (var i = 0; !looked.IsCompleted && (i < 200 || Volatile.Read(ref looks) < 20); i++)
            {
                Put(folder, new ChangedFile("r05.yaml", i % 2 == 0 ? old : changed, i % 2 == 0 ? changed : old));
            }

            Volatile.Write(ref done, true);
            await looked;
            Assert.Equal([roll], Directory.GetFiles(folder));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Nothing_is_written_through_a_link_that_bears_the_name_of_an_unfinished_file()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        var folder = Directory.CreateTempSubdirectory("spoolbook-").FullName;
        try
        {
            var (roll, elsewhere) = (Path.Combine(folder, "r05.yaml"), Path.Combine(folder, "elsewhere"));
            File.WriteAllText(roll, "1");
            File.WriteAllText(elsewhere, "theirs");
            File.CreateSymbolicLink(roll + ".part", elsewhere);
            Put(folder, new ChangedFile("r05.yaml", "1", "one"));
            using (var work = WorkFolder.Open(folder, "make", _around))
            {
                new PaperFolder(work).Put([new Spoolbook.Papers.PaperFile("r05.yaml", [.. "two"u8])]);
            }

            Assert.Equal(("two", "theirs"), (File.ReadAllText(roll), File.ReadAllText(elsewhere)));
            Assert.True(File.Exists(roll + ".part"));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    static readonly CommandEnvironment _around = new(TextWriter.Null, TextWriter.Null, "", Workbench.Made, Colour: false, Width: 100);

    static void Put(string folder, params ChangedFile[] files)
    {
        using var work = WorkFolder.Open(folder, "import", _around);
        RollFiles.Put(work, files, "takes.csv");
    }

    static Gen<string> OneOf(params string[] words) => Gen.Int[0, words.Length - 1].Select(i => words[i]);

    static string Patched(string before, List<string> difference)
    {
        if (difference.Count == 0)
        {
            return before;
        }

        var old = Lines(before);
        var patched = new StringBuilder();
        var at = 0;
        for (var i = 2; i < difference.Count; i++)
        {
            var line = difference[i];
            if (line.StartsWith("@@", StringComparison.Ordinal))
            {
                var range = line.Split(' ')[1][1..].Split(',');
                var from =
                    int.Parse(range[0], System.Globalization.CultureInfo.InvariantCulture) - (range.Length > 1 && range[1] == "0" ? 0 : 1);
                patched.Append(string.Concat(old[at..from]));
                at = from;
                continue;
            }

            var whole = line[1..] + (i + 1 < difference.Count && difference[i + 1][0] == '\\' ? "" : "\n");
            switch (line[0])
            {
                case '+':
                    patched.Append(whole);
                    break;
                case ' ' or '-':
                    Assert.Equal(old[at++], whole);
                    patched.Append(line[0] == ' ' ? whole : "");
                    break;
            }
        }

        return patched.Append(string.Concat(old[at..])).ToString();
    }

    static List<string> Lines(string text)
    {
        var lines = text.Split('\n').Select(l => l + "\n").ToList();
        lines[^1] = lines[^1][..^1];
        return [.. lines.Where(l => l.Length > 0)];
    }
}
