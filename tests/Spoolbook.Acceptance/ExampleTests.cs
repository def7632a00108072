using Spoolbook.Acceptance.Manual;
using Spoolbook.Commands;

namespace Spoolbook.Acceptance;

/// <summary>What the help of a command gives to copy can be typed.</summary>
public sealed class ExampleTests
{
    public static TheoryData<string> Names()
    {
        var names = new TheoryData<string>();
        foreach (var (name, _) in CommandTree.All(CommandTree.Root()))
        {
            names.Add(name);
        }

        return names;
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_command_has_examples_that_are_a_line_of_its_own(string name)
    {
        var examples = Examples.Of(name);

        Assert.InRange(examples.Count, 2, 3);
        foreach (var (line, about) in examples)
        {
            var parsed = CommandTree.Root().Parse(line);
            Assert.Null(WrongUse.UnknownOption(parsed));
            Assert.DoesNotContain(parsed.Errors, error => !error.Message.Contains("there is no ", StringComparison.Ordinal));
            Assert.True(name.Length == 0 || line.StartsWith(name, StringComparison.Ordinal), line);
            Assert.NotEqual("", about);
        }
    }
}
