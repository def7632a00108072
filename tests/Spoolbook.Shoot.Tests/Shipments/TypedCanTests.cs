using Spoolbook.Shoot.Cans;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Shoot.Tests.Shipments;

public class TypedCanTests
{
    static readonly CanCode Code = new("HERON", "R03");

    static readonly ShipmentRecord Record = new(default, "2026-10-16-harbour", "Harbour", new DateOnly(2026, 10, 16))
    {
        Cans = [Can(1, "HERON", "R02"), Can(2, "HERON", "R03"), Can(3, "FERRY", "R03")],
    };

    static ShippedCan Can(int number, string production, string roll) =>
        new(default, number, 1, new CanCode(production, roll).ToString(), production, roll);

    // A reader types as a keyboard does, and on a German one the key of the slash is a hyphen.
    [Theory]
    [InlineData("HERON/R03/{0}")]
    [InlineData("HERON-R03-{0}")]
    [InlineData("heron r03 {0}")]
    [InlineData("HERON/R03")]
    [InlineData("2")]
    public void A_can_is_found_whatever_is_between_the_parts_of_its_code(string typed)
    {
        var found = TypedCans.Find(string.Format(null, typed, Code.Check), [Record]);
        Assert.Equal([Code.ToString()], found.Select(f => f.Can.Code));
    }

    [Fact]
    public void A_code_with_a_wrong_check_character_is_another_can()
    {
        var wrong = $"HERON/R03/{(Code.Check == 'A' ? 'B' : 'A')}";
        Assert.Empty(TypedCans.Find(wrong, [Record]));
        Assert.Equal(Code.ToString(), TypedCans.Misread(wrong, [Record])!.Code);
    }
}
