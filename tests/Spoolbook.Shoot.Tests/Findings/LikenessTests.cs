using CsCheck;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Shoot.Tests.Findings;

public class LikenessTests
{
    static readonly string[] _names = ["25mm", "75mm", "N250-A", "X200-A", "finder-loss", "short-end-of"];

    [Theory]
    [InlineData("52mm", "25mm")] // swapped
    [InlineData("N250A", "N250-A")] // left out
    [InlineData("finder-losss", "finder-loss")] // put in
    [InlineData("finder-lass", "finder-loss")] // changed
    [InlineData("Short_End of", "short-end-of")] // no slip at all
    public void A_slip_of_the_pen_is_understood(string written, string meant) => Assert.Equal(meant, Likeness.Nearest(written, _names));

    [Theory]
    [InlineData("tripod")]
    [InlineData("")]
    [InlineData("N100-C")] // three of six letters
    public void Where_nothing_is_near_nothing_is_guessed(string written) => Assert.Null(Likeness.Nearest(written, _names));

    [Theory]
    [InlineData("25mm", "25")]
    [InlineData("25 mm", "25")]
    [InlineData("25", "25mm")]
    public void A_lens_is_the_same_with_its_unit_or_without(string written, string meant) =>
        Assert.Equal(meant, Likeness.Nearest(written, [meant, "75" + meant[2..]]));

    [Fact]
    public void Of_two_names_as_near_the_first_by_alphabet_is_taken() => Assert.Equal("R1", Likeness.Nearest("R0", ["R2", "R1"]));

    [Fact]
    public void Beyond_forty_letters_there_is_no_nearest_name()
    {
        var forty = new string('a', 40);

        Assert.Equal(forty, Likeness.Nearest(forty, [forty]));
        Assert.Null(Likeness.Nearest(forty + "a", [forty]));
        Assert.Null(Likeness.Nearest(forty, [forty + "a"]));
    }

    [Fact]
    public void The_nearest_name_is_the_same_in_any_order_of_the_list() =>
        Gen.String[Gen.Char['a', 'd'], 1, 6]
            .List[1, 8]
            .Sample(names => Likeness.Nearest("abc", names) == Likeness.Nearest("abc", Enumerable.Reverse(names)));

    [Fact]
    public void Slips_are_counted_as_in_the_table_of_the_textbook() =>
        Gen.Select(Gen.String[Gen.Char['a', 'd'], 0, 12], Gen.String[Gen.Char['a', 'd'], 1, 12])
            .Sample(
                (typed, name) =>
                    Likeness.Nearest(typed, [name]) is not null
                    == OptimalAlignment(typed, name) <= Math.Max(1, Math.Max(typed.Length, name.Length) / 3)
            );

    // Optimal string alignment, the whole table; the recurrence is from memory.
    static int OptimalAlignment(string from, string to)
    {
        var table = new int[from.Length + 1, to.Length + 1];
        for (var i = 0; i <= from.Length; i++)
        {
            for (var j = 0; j <= to.Length; j++)
            {
                table[i, j] =
                    Math.Min(i, j) == 0
                        ? Math.Max(i, j)
                        : Math.Min(
                            Math.Min(table[i - 1, j], table[i, j - 1]) + 1,
                            table[i - 1, j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1)
                        );
                if (i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1])
                {
                    table[i, j] = Math.Min(table[i, j], table[i - 2, j - 2] + 1);
                }
            }
        }

        return table[from.Length, to.Length];
    }
}
