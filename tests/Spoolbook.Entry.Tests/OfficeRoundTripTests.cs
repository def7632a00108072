using Spoolbook.Papers.Tests.Workbook;
using Spoolbook.Reading.Files;

namespace Spoolbook.Entry.Tests;

/// <summary>Our workbook, edited and saved in an outside spreadsheet program, can be imported.</summary>
public class OfficeRoundTripTests
{
    static readonly (string Head, object Typed)[] NewTake =
    [
        ("Roll", "R02"),
        ("Scene", "1"),
        ("Shot", "A"),
        ("Take", 5),
        ("Mark", "NG"),
        ("To", 60.25),
        ("Lens", "10mm"),
        ("Stop", "8"),
        ("Remarks", "Sun gone, gulls"),
    ];

    [ToolTheory("soffice")]
    [InlineData("xlsx", "xlsx")]
    [InlineData("csv", "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,5")]
    public void A_take_typed_below_the_last_and_saved_by_LibreOffice_is_the_one_line_that_changes(string ending, string filter)
    {
        var shoot = new ShootInMemory(new FolderFiles(Repository.Sample));
        var typed = new TakesBook(shoot.Workbook).Insert("R02 1A/4", NewTake).Saved();

        var saved = Office.Saved(typed, ending, filter);

        Assert.Equal(
            ["+  - take: {scene: 1, shot: A, take: 5, to: 60+10, lens: 10mm, stop: 8, mark: ng, note: \"Sun gone, gulls\"}"],
            shoot.Difference(saved, "footage." + ending)
        );
    }
}
