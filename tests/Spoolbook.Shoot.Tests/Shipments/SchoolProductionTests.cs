using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Shipments;
using static Spoolbook.Shoot.Tests.Shipments.SmallSchool;

namespace Spoolbook.Shoot.Tests.Shipments;

public class SchoolProductionTests
{
    static SchoolProduction In(string folder) => Production("HERON") with { Folder = folder };

    [Theory]
    [InlineData("", "rolls/r01.yaml")]
    [InlineData("first-year/heron", "first-year/heron/rolls/r01.yaml")]
    public void A_place_is_told_from_the_schools_folder(string folder, string file)
    {
        var place = new Place("rolls/r01.yaml", 7, 3, 2);
        Assert.Equal(place with { File = file }, In(folder).At(place));
        Assert.True(In(folder).Holds(In(folder).At(place)));
    }

    [Fact]
    public void A_folder_whose_name_begins_alike_is_another_production()
    {
        Assert.False(In("heron").Holds(In("heron-2").At(new Place("rolls/r01.yaml", 1, 1, 1))));
        Assert.False(In("heron").Holds(new Place("ferry/heron/rolls/r01.yaml", 1, 1, 1)));
    }
}
