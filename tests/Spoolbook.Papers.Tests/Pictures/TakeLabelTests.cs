using CsCheck;
using Spoolbook.Papers.Pictures;

namespace Spoolbook.Papers.Tests.Pictures;

public class TakeLabelTests
{
    static readonly Gen<Label[]> Lane =
        from takes in Gen.Int[1, 90]
        from slates in Gen.Int[1, 99].Array[takes]
        select slates
            .Select(
                (slate, i) => new Label($"{slate}A/{i} NG", $"{slate}A/{i}", null, slate % 2 == 0, 510.0 * (i + 0.5) / takes, 510.0 / takes)
            )
            .ToArray();

    [Fact]
    public void No_labels_overlap_with_ninety_takes_in_a_lane() =>
        Lane.Sample(labels =>
        {
            if (TakeLabels.Place(labels, 510) is not { } placed)
            {
                return;
            }

            Assert.Equal(labels.Length, placed.Length);
            foreach (var row in placed.GroupBy(l => l.Level))
            {
                foreach (var (left, right) in row.Zip(row.Skip(1)))
                {
                    Assert.True(left.Left + left.Width < right.Left);
                }
            }
        });

    // Below the other label it would seem to be that one's leader.
    [Fact]
    public void No_leader_runs_behind_another_label() =>
        Lane.Sample(labels =>
        {
            var above = (TakeLabels.Place(labels, 510) ?? []).Where(l => l.Level > 0).ToList();
            Assert.All(above, label =>
                Assert.DoesNotContain(above, other =>
                    other.Level < label.Level && other.Left - 1 <= label.Label.At && label.Label.At <= other.Right + 1
                )
            );
        });

    // Three short takes in a row between long ones, as on a roll of sixty.
    [Fact]
    public void Short_takes_side_by_side_have_their_labels_like_flags_beside_their_leaders()
    {
        var placed = TakeLabels
            .Place(
                [
                    new Label("1A/6 H", "1A/6", null, false, 107, 15),
                    new Label("1A/7 G", "1A/7", null, true, 118, 7),
                    new Label("1A/8 NG", "1A/8", null, false, 124, 4),
                ],
                510
            )!
            .Value;

        Assert.All(placed, label => Assert.InRange(label.Label.At, label.Left, label.Right));
        Assert.Equal(3, placed.Length);
    }

    [Fact]
    public void Twenty_two_takes_have_room_for_their_labels() =>
        Assert.NotNull(
            TakeLabels.Place(
                Enumerable.Range(0, 22).Select(i => new Label($"12A/{i} NG", $"12A/{i}", null, false, 23 * (i + 0.5), 23)),
                510
            )
        );

    [Fact]
    public void A_take_too_short_for_its_mark_has_its_slate_in_the_box_and_no_leader()
    {
        var placed = TakeLabels
            .Place(
                [
                    new Label("7A/1 NG", "7A/1", null, false, 60, 120),
                    new Label("7A/2 NG", "7A/2", null, false, 132, 24),
                    new Label("7A/3 NG", "7A/3", null, false, 148, 8),
                ],
                510
            )!
            .Value;
        Assert.Equal([("7A/1 NG", 0), ("7A/2", 0), ("7A/3 NG", 1)], placed.Select(l => (l.Text, l.Level)));
    }

    [Fact]
    public void Labels_in_their_boxes_are_narrower_than_the_boxes() =>
        Lane.Sample(labels =>
            Assert.All((TakeLabels.Place(labels, 510) ?? []).Where(l => l.Level == 0), l => Assert.True(l.Width < l.Label.Room))
        );

    [Fact]
    public void Sixty_takes_without_room_for_their_slates_are_found_by_their_numbers() =>
        Assert.Equal(
            60,
            TakeLabels
                .Place(
                    Enumerable.Range(1, 60).Select(i => new Label($"112A/{i} NG", $"112A/{i}", $"{i}", false, 8.5 * (i - 0.5), 8.5)),
                    510
                )!
                .Value.Select(l => l.Label.Number)
                .Distinct()
                .Count()
        );
}
