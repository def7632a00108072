using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Shoot.Tests.Shipments;

public class LabNamesTests
{
    [Theory]
    [InlineData("Harbour Film Lab", "harbour-film-lab")]
    [InlineData("  Reel & Sons, 2nd floor ", "reel-sons-2nd-floor")]
    [InlineData("現像所", "lab")]
    [InlineData("—", "lab")]
    public void A_labs_folder_has_plain_letters_and_digits_only(string lab, string folder) =>
        Assert.Equal(folder, LabNames.InFolder(lab));

    [Theory]
    [InlineData(59, " b", 59)] // The 60th character would be the hyphen, and no name ends with one.
    [InlineData(60, "", 60)]
    [InlineData(61, "", 60)]
    public void A_labs_folder_has_at_most_sixty_characters(int letters, string behind, int kept) =>
        Assert.Equal(new string('a', kept), LabNames.InFolder(new string('a', letters) + behind));
}
