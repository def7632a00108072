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

    [Theory]
    [InlineData("")]
    [InlineData(" / ")]
    [InlineData("5")]
    [InlineData("GULL/R03")]
    [InlineData("GULL/R03/X")]
    public void What_is_on_no_can_finds_none_and_is_no_misreading(string typed)
    {
        Assert.Empty(TypedCans.Find(typed, [Record]));
        Assert.Null(TypedCans.Misread(typed, [Record]));
    }

    [Theory]
    [InlineData("-")]
    [InlineData("?")]
    public void A_record_whose_code_was_struck_out_hides_no_other_can(string struck)
    {
        var spoiled = Record with { Cans = [Record.Cans[0] with { Code = struck }, .. Record.Cans.Skip(1)] };
        Assert.Empty(TypedCans.Find(struck, [spoiled]));
        Assert.Empty(TypedCans.Find("", [spoiled]));
        Assert.Null(TypedCans.Misread("A", [spoiled]));
        Assert.Equal(2, Assert.Single(TypedCans.Find("HERON/R03", [spoiled])).Can.Number);
        Assert.Equal(Code.ToString(), TypedCans.Misread("HERON/R03/?A", [spoiled])?.Code);
    }

    [Fact]
    public void A_number_means_that_can_of_each_open_consignment()
    {
        var other = Record with { Id = "2026-10-23-harbour", Cans = [Can(2, "GULL", "R01")] };
        Assert.Equal(["HERON", "GULL"], TypedCans.Find("2", [Record, other]).Select(f => f.Can.Production));
    }
}
