using System.Runtime.CompilerServices;

namespace Spoolbook.Reading.Tests.Sheets;

/// <summary>Compares a text with one that a person has read, in a file beside the test.</summary>
static class Verified
{
    public static void Text(string name, string actual, [CallerFilePath] string test = "")
    {
        var folder = Path.GetDirectoryName(test)!;
        var verified = Path.Combine(folder, name + ".verified.txt");
        var received = Path.Combine(folder, name + ".received.txt");
        var expected = File.Exists(verified) ? File.ReadAllText(verified) : "";
        if (expected.TrimEnd() == actual.TrimEnd())
        {
            File.Delete(received);
            return;
        }

        File.WriteAllText(received, actual.TrimEnd() + "\n");
        Assert.Fail($"Compare {received} with {verified}; if it is right, take it over.");
    }
}
