using Spoolbook.Papers.Tests.Ledger;
using Spoolbook.Papers.Tests.Workbook;
using Spoolbook.Papers.Wording;
using Spoolbook.Reading.Files;

namespace Spoolbook.Papers.Tests.Wording;

/// <summary>A process is named as a lab writes it, however it was typed.</summary>
public class ProcessNamesTests
{
    [Theory]
    [InlineData("ecn-2", "ECN-2")]
    [InlineData("bw-reversal", "Black-and-white reversal")]
    [InlineData("e-6", "E-6")]
    [InlineData("vnf-1", "VNF-1")]
    [InlineData("d96", "D96")]
    [InlineData("cross process in the school's tank", "cross process in the school's tank")]
    [InlineData("as agreed", "as agreed")]
    public void A_process_is_written_as_a_lab_writes_it(string typed, string printed)
    {
        var format = new PaperFormat(Shoots.Of(TextFiles.OneFile(Text)).Books.Production, Workbooks.English);

        Assert.Equal(printed, format.Process(typed));
    }

    const string Text = """
        spoolbook: 1
        title: The Ferry Light
        code: FERRY
        """;
}
