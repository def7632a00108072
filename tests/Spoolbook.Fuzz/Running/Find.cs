using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Spoolbook.Fuzz.Running;

/// <summary>A fault: what it is called by, so that it is kept once, and all that is known of it.</summary>
internal sealed record Find(string Key, string Report)
{
    const int Frames = 3;

    /// <summary>An exception that got out, by its kind and the product's topmost frames.</summary>
    public static Find Of(Exception wrong)
    {
        var inner = wrong is AggregateException { InnerException: { } one } ? one : wrong;
        return new Find(
            inner.GetType().Name + Top(inner.StackTrace ?? "") + (inner is Targets.BrokenPromiseException ? ": " + inner.Message : ""),
            wrong.ToString()
        );
    }

    /// <summary>A process that ended by itself, by what it said last.</summary>
    public static Find OfCrash(int status, string said) =>
        new(
            (
                said.Contains("Stack overflow", StringComparison.Ordinal)
                    ? "StackOverflow"
                    : string.Create(CultureInfo.InvariantCulture, $"Exit {status}")
            ) + Top(said),
            said
        );

    /// <summary>Writes the find and its input, unless the fault is known; says whether it was new.</summary>
    public bool Save(string folder, byte[] input)
    {
        var home = Path.Combine(folder, Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(Key)))[..10]);
        if (Directory.Exists(home) && File.Exists(Path.Combine(home, "report.txt")))
        {
            // The shortest input says most.
            var known = Path.Combine(home, "input");
            if (new FileInfo(known).Length > input.Length)
            {
                File.WriteAllBytes(known, input);
            }

            return false;
        }

        Directory.CreateDirectory(home);
        File.WriteAllBytes(Path.Combine(home, "input"), input);
        File.WriteAllText(Path.Combine(home, "report.txt"), $"{Key}\n\n{Report}\n");
        return true;
    }

    // The frames of a loop come in any order, and names without their places do not change with the next line of code.
    static string Top(string stack)
    {
        var frames =
            from line in stack.Split('\n')
            let at = line.IndexOf("at ", StringComparison.Ordinal)
            where at >= 0
            let frame = line[(at + 3)..].Split(" in ")[0].Split('(')[0].Trim()
            where frame.StartsWith("Spoolbook", StringComparison.Ordinal) && !frame.StartsWith("Spoolbook.Fuzz", StringComparison.Ordinal)
            select frame;
        return string.Concat(frames.Distinct().Take(Frames).Select(f => " < " + f));
    }
}
