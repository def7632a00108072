using System.Text;
using Spoolbook.Reading.Editing;

namespace Spoolbook.Reading.Tests.Editing;

/// <summary>The first line of a file, which points an editor to its schema.</summary>
public sealed class SchemaLineTests
{
    const string Line = "# yaml-language-server: $schema=schemas/kit.schema.json";

    [Theory]
    [InlineData("spoolbook: 1\n", Line + "\nspoolbook: 1\n")]
    [InlineData("spoolbook: 1\r\nbodies:\r\n", Line + "\r\nspoolbook: 1\r\nbodies:\r\n")]
    [InlineData("# Our kit\nspoolbook: 1\n", Line + "\n# Our kit\nspoolbook: 1\n")]
    [InlineData("\uFEFFspoolbook: 1\n", "\uFEFF" + Line + "\nspoolbook: 1\n")]
    [InlineData("spoolbook: 1", Line + "\nspoolbook: 1")]
    public void A_file_without_it_gets_it_with_its_own_line_ends(string before, string after) =>
        Assert.Equal(after, Encoding.UTF8.GetString(SchemaLine.Before(Encoding.UTF8.GetBytes(before), "schemas/kit.schema.json")!));

    [Theory]
    [InlineData("# yaml-language-server: $schema=https://example.org/mine.json\nspoolbook: 1\n")]
    [InlineData("# Our kit\n# yaml-language-server: $schema=schemas/kit.schema.json\nspoolbook: 1\n")]
    [InlineData("")]
    public void A_file_that_has_one_keeps_its_own(string before) =>
        Assert.Null(SchemaLine.Before(Encoding.UTF8.GetBytes(before), "schemas/kit.schema.json"));

    [Fact]
    public void A_file_that_is_no_UTF_8_stays_as_it_is() =>
        Assert.Null(SchemaLine.Before([0xFF, 0xFE, 0x61, 0x00], "schemas/kit.schema.json"));
}
