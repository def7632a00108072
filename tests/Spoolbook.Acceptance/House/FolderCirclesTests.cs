namespace Spoolbook.Acceptance.House;

public sealed class FolderCirclesTests
{
    // In these rooms the outermost folder has both what all others build on and what puts them together.
    static readonly HashSet<string> BothEnds = ["Spoolbook", "Spoolbook.Checks", "Spoolbook.Entry", "Spoolbook.Reading"];

    public static TheoryData<string> Rooms => [.. RoomFolders.Rooms];

    [Theory]
    [MemberData(nameof(Rooms))]
    public void No_two_folders_of_a_room_use_each_other(string room) => Assert.Empty(RoomFolders.Of(room).Circles(BothEnds));

    [Fact]
    public void A_circle_is_seen_however_a_folder_is_named()
    {
        string[] files =
        [
            "using Room.Cans;\nnamespace Room.Labels;\nclass Label;",
            "namespace Room.Cans;\nclass Can { Boxes.Box In { get; } }",
            "namespace Room.Boxes;\nclass Box { Shelf On { get; } }",
            "namespace Room;\nclass Shelf { Room.Labels.Label? Named { get; } } // no Room.Attic.Trunk here",
            "namespace Room.Attic;\nclass Trunk { Shelf On { get; } }",
        ];
        Assert.Equal(["Room ↔ Room.Boxes ↔ Room.Cans ↔ Room.Labels"], RoomFolders.Of(files).Circles(new HashSet<string>()));
        Assert.Empty(RoomFolders.Of(files).Circles(new HashSet<string> { "Room" }));
    }
}
