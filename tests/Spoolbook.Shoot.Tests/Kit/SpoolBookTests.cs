using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Records;
using Spoolbook.Shoot.Tests.Sheets;
using static Spoolbook.Shoot.Tests.Sheets.Sheet;

namespace Spoolbook.Shoot.Tests.Kit;

public class SpoolBookTests
{
    [Fact]
    public void Spools_of_every_size_in_the_kit_are_counted_together()
    {
        var spools = SpoolsOf([2, 1], ShotOut("R01", 9, 12));

        Assert.Equal((2, 3, 3, 1), (spools.Items.Length, spools.InKit, spools.Empty, spools.Gone));
    }

    [Fact]
    public void A_roll_run_off_leaves_its_own_spool_for_the_one_that_went_with_it() =>
        Assert.Equal(1, SpoolsOf([1], ShotOut("R01", 9, 12)).Empty);

    [Fact]
    public void A_roll_with_film_left_on_it_keeps_its_spool_for_the_short_end()
    {
        var spools = SpoolsOf([1], Loaded("R01", 9).Take("1A/1", At(60)).Unload(on: Hour(12)));

        Assert.Equal((0, 1), (spools.Empty, spools.Gone));
    }

    [Fact]
    public void A_roll_in_the_camera_has_a_spool_that_is_free_again_once_it_is_run_off()
    {
        var spools = SpoolsOf([3], Loaded("R01", 9).Take("1A/1", At(60)));

        Assert.Equal((2, 1, 3, 0), (spools.Empty, spools.InCameras, spools.ForTheNext, spools.Gone));
    }

    [Fact]
    public void The_last_spool_of_the_kit_is_still_a_spool()
    {
        Assert.Null(SpoolsOf([1], Loaded("R01", 9)).FirstWithout);
        Assert.Equal("R02", SpoolsOf([1], Loaded("R01", 9), Loaded("R02", 10, "B2")).FirstWithout?.Name.Value);
    }

    [Fact]
    public void The_first_roll_loaded_without_a_spool_is_named_and_not_the_last()
    {
        // Loaded in another order than they are numbered.
        var spools = SpoolsOf([1], Loaded("R01", 11, "B3"), Loaded("R02", 10, "B2"), Loaded("R03", 9));

        Assert.Equal(("R02", -2), (spools.FirstWithout?.Name.Value, spools.Empty));
    }

    [Fact]
    public void A_roll_without_a_spool_stays_named_when_one_is_free_later()
    {
        var spools = SpoolsOf([1], ShotOut("R01", 9, 12), Loaded("R02", 10, "B2"));

        Assert.Equal(("R02", 0), (spools.FirstWithout?.Name.Value, spools.Empty));
    }

    [Fact]
    public void A_roll_loaded_in_the_minute_in_which_another_came_out_takes_its_spool() =>
        Assert.Null(SpoolsOf([1], ShotOut("R01", 9, 12), Loaded("R02", 12)).FirstWithout);

    // R02 takes R01's spool at one o'clock, and R03 finds none at three.
    [Fact]
    public void A_spool_is_free_when_its_roll_comes_out_and_not_when_the_next_goes_in() =>
        Assert.Equal(
            "R03",
            SpoolsOf([1], ShotOut("R01", 9, 12), ShotToTheEnd("R02", 13, "B2"), Loaded("R03", 15)).FirstWithout?.Name.Value
        );

    [Fact]
    public void Without_spools_on_the_list_nobody_counts_them()
    {
        var spools = Books.Of(SmallProduction.Of(Loaded("R01", 9))).Spools;

        Assert.Empty(spools.Items);
        Assert.Null(spools.FirstWithout);
    }

    // One spool; each roll is shot to its end before the next goes in.
    [Fact]
    public void Where_no_unloading_is_written_the_next_roll_in_the_body_says_that_it_is_out()
    {
        var spools = SpoolsOf([1], ShotToTheEnd("R01", 9), ShotToTheEnd("R02", 12), Loaded("R03", 15).Take("1A/1", At(60)));

        Assert.Null(spools.FirstWithout);
        Assert.Equal((0, 1, 2), (spools.Empty, spools.InCameras, spools.Gone));
    }

    [Fact]
    public void A_roll_in_another_body_says_nothing_about_this_one()
    {
        var spools = SpoolsOf([2], ShotToTheEnd("R01", 9), ShotToTheEnd("R02", 12, "B2"));

        Assert.Equal((0, 2, 0), (spools.Empty, spools.InCameras, spools.Gone));
    }

    [Fact]
    public void A_re_can_that_is_not_sent_sends_no_spool_to_the_lab()
    {
        var spools = SpoolsOf([2], Loaded("R01", 9).Head(At(4)).Unload(on: Hour(10)), ShotOut("R02", 11, 12));

        Assert.Equal((2, 1), (spools.Empty, spools.Gone));
    }

    static DateTime Hour(int hour) => FirstDay.ToDateTime(new TimeOnly(hour, 0));

    static Sheet Loaded(string name, int hour, string body = "B1")
    {
        var roll = Of(At(100), name).Roll;
        return new Sheet(roll with { Body = Written(body), Load = roll.Load with { On = Written(Hour(hour)) } });
    }

    static Sheet ShotToTheEnd(string name, int hour, string body = "B1") => Loaded(name, hour, body).Take("1A/1", At(100));

    static Sheet ShotOut(string name, int hour, int outAt) => ShotToTheEnd(name, hour).Unload(on: Hour(outAt));

    static SpoolBook SpoolsOf(int[] spools, params Sheet[] sheets) =>
        Books
            .Of(
                SmallProduction.Of(sheets) with
                {
                    Items =
                    [
                        .. spools.Select(n => new KitItem(Nowhere, Written("Spools"), Written(true), new Returned(n, null, null))),
                        new KitItem(Nowhere, Written("Bags"), null, new Returned(9, null, null)),
                    ],
                }
            )
            .Spools;
}
