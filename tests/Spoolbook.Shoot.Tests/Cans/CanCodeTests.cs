using CsCheck;
using Spoolbook.Shoot.Cans;

namespace Spoolbook.Shoot.Tests.Cans;

public class CanCodeTests
{
    const string Characters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    static readonly Gen<string> Code = Gen.Char[Characters].Array[1, 24].Select(c => new string(c));

    [Theory]
    [InlineData("A1-2425G-ABC1234002", 'M')] // Global Release Identifier Standard 2.1 (IFPI), its example A1-2425G-ABC1234002-M
    [InlineData("0000-0000-D07A-0090", 'Q')] // ISAN user guide: ISAN 0000-0000-D07A-0090-Q-0000-0000-X, the work's check character
    [InlineData("0000-0000-D07A-0090-0000-0000", 'X')] // the same, the version's check character, over both
    public void Published_codes_end_with_their_check_character(string code, char check)
    {
        Assert.Equal(check, CheckCharacter.Compute(code));
        Assert.True(CheckCharacter.Holds(code + check));
    }

    [Fact]
    public void One_wrong_character_always_shows() =>
        Gen.Select(Code, Gen.Int[0, 23], Gen.Char[Characters])
            .Sample(
                (code, at, wrong) =>
                {
                    var place = at % code.Length;
                    var other = code[..place] + wrong + code[(place + 1)..];
                    return other == code || CheckCharacter.Compute(other) != CheckCharacter.Compute(code);
                }
            );

    [Fact]
    public void A_can_is_identified_by_its_production_its_roll_and_a_check_character()
    {
        var can = new CanCode("HERON", "R03");
        Assert.Equal($"HERON/R03/{CheckCharacter.Compute("HERONR03")}", can.ToString());
        Assert.NotEqual(can.Check, new CanCode("HERON", "R08").Check);
    }

    [Fact]
    public void Small_letters_hyphens_and_blanks_make_no_difference_over_the_telephone() =>
        Assert.Equal(new CanCode("FERRY-2", "R 12").Check, new CanCode("ferry2", "r12").Check);

    [Theory]
    [InlineData("R1.2", "R12")]
    [InlineData("Ρ7", "Р7")] // Greek rho and Cyrillic er look alike and are not
    [InlineData("Ж1", "Ш1")]
    public void Letters_of_other_alphabets_and_signs_are_counted(string one, string other) =>
        Assert.NotEqual(new CanCode("X", one).Check, new CanCode("X", other).Check);
}
