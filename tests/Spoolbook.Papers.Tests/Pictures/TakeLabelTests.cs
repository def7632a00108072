using CsCheck;
using Spoolbook.Papers.Pictures;

namespace Spoolbook.Papers.Tests.Pictures;

public class TakeLabelTests
{
    static readonly Gen<Label[]> Lane =
        from takes in Gen.Int[1, 90]
        from slates in Gen.Int[1, 99].Array[takes]
        select slates.Select((slate, i) => new Label($"{slate}A/{i} NG", 690.0 * (i + 0.5) / takes, 690.0 / takes)).ToArray();

    [Fact]
    public void No_label_lies_on_another_with_ninety_takes_in_a_lane() => Lane.Sample(labels =>
    {
        if (TakeLabels.Place(labels, 690) is not { } placed)
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

    [Fact]
    public void Twenty_two_takes_have_room_for_their_labels() =>
        Assert.NotNull(TakeLabels.Place(Enumerable.Range(0, 22).Select(i => new Label($"12A/{i} NG", 31 * (i + 0.5), 31)), 690));

    [Fact]
    public void Labels_in_their_boxes_are_narrower_than_the_boxes() => Lane.Sample(labels =>
        Assert.All((TakeLabels.Place(labels, 690) ?? []).Where(l => l.Level == 0), l => Assert.True(l.Width < l.Label.Room)));
}
