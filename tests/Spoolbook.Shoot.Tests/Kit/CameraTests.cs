using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Kit;

public class CameraTests
{
    // A full wind drives 16 1/2 ft.
    static readonly Footage _fullWind = At(16, 20);

    [Fact]
    public void Each_body_of_the_kit_has_its_roll_or_is_empty()
    {
        var cameras = CamerasOf(Of(At(100)).Head(At(4)).Take("1A/1", At(20)));

        Assert.Equal([("B1", "R01"), ("B2", null)], cameras.Select(c => (c.Body, c.Roll?.Name.Value)));
        Assert.Equal([At(80), null], cameras.Select(c => c.Left));
    }

    [Fact]
    public void Film_in_a_camera_that_the_kit_does_not_name_comes_after_the_kit()
    {
        var borrowed = In("B9", Of(At(100)).Take("1A/1", At(10)));
        var nameless = In(null, Of(At(100), "R02").Take("1A/2", At(20)));

        Assert.Equal(
            [("B1", null), ("B2", null), ("B9", "R01"), (null, "R02")],
            CamerasOf(borrowed, nameless).Select(c => (c.Body, c.Roll?.Name.Value))
        );
    }

    [Fact]
    public void An_unloaded_roll_is_in_no_camera() =>
        Assert.All(CamerasOf(In("B9", Of(At(100)).Take("1A/1", At(100)).Unload())), c => Assert.Null(c.Roll));

    [Fact]
    public void Film_ahead_that_was_wound_back_is_exposed_up_to_where_it_had_been()
    {
        var roll = Of(At(100)).Head(At(4)).Take("1A/1", At(20));

        Assert.Null(InCamera(roll).ExposedTo);
        Assert.Equal((At(10), At(20)), (InCamera(roll.Rewind(At(10))).At, InCamera(roll.Rewind(At(10))).ExposedTo));
    }

    [Fact]
    public void Film_run_over_again_to_the_last_frame_has_only_fresh_film_ahead()
    {
        var again = Of(At(100)).Take("1A/1", At(20)).Rewind(At(10)).Take("1A/2", At(19, 39));

        Assert.Equal(At(20), InCamera(again).ExposedTo);
        Assert.Null(InCamera(again.Take("1A/3", At(20))).ExposedTo);
    }

    // The dial reads zero again 3 ft down the film: 20 ft of film are 17 on the sheet.
    [Fact]
    public void Exposed_film_ahead_counts_as_the_sheet_does_after_a_reload()
    {
        var moved = Of(At(100)).Take("1A/1", At(20)).Reload(zeroMoved: At(3), to: At(5));

        Assert.Equal((At(5), At(17)), (InCamera(moved).At, InCamera(moved).ExposedTo));
    }

    [Fact]
    public void A_spring_wound_on_the_sheet_has_the_rest_of_its_wind() =>
        Assert.Equal(At(6, 20), InCamera(Of(At(100)).Take("1A/1", At(5)).Wind().Take("1A/2", At(15))).SpringLeft);

    [Fact]
    public void Nobody_knows_what_is_left_on_a_spring_whose_winding_is_not_written() =>
        Assert.Null(InCamera(Of(At(100)).Take("1A/1", At(5))).SpringLeft);

    [Fact]
    public void A_motor_leaves_the_spring_out_of_it() =>
        Assert.Null(InCamera(Of(At(100)).Wind().Take("1A/1", At(5), also: t => t with { Motor = Written("E1") })).SpringLeft);

    [Fact]
    public void A_body_whose_full_wind_is_not_known_has_no_rest_of_it()
    {
        var roll = Of(At(100)).Wind().Take("1A/1", At(5));

        Assert.Null(RollInCamera.Of(roll.Book(), SmallProduction.Of(roll)).SpringLeft);
    }

    // 16 ft 19 fr leave a frame; one more leaves nothing, and then it was wound on the way.
    [Theory]
    [InlineData(16, 19, 1)]
    [InlineData(16, 20, null)]
    [InlineData(60, 0, null)]
    public void A_run_off_longer_than_a_wind_was_wound_on_the_way(int feet, int frames, int? left) =>
        Assert.Equal(left, (int?)InCamera(Of(At(100)).Wind().RunOff(At(feet, frames))).SpringLeft?.Frames);

    [Fact]
    public void A_take_that_ran_the_spring_down_leaves_nothing_on_it() =>
        Assert.Equal(Footage.Zero, InCamera(Of(At(100)).Wind().Take("1A/1", At(16, 20))).SpringLeft);

    static Sheet In(string? body, Sheet sheet) => new(sheet.Roll with { Body = Perhaps(body) });

    static ImmutableArray<CameraFilm> CamerasOf(params Sheet[] sheets) => Books.Of(SmallProduction.Of(sheets)).Cameras.Cameras;

    static RollInCamera InCamera(Sheet sheet)
    {
        var small = SmallProduction.Of(sheet);
        var production = small with { Bodies = [.. small.Bodies.Select(b => b with { FullWind = Written(_fullWind) })] };
        return RollInCamera.Of(BookKeeper.Keep(production).Rolls.Single(), production);
    }
}
