using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of the production's own rules.</summary>
static class HouseRulesKeys
{
    public static readonly NamesKey<Level?> Levels = new(
        "levels",
        "checks or groups",
        WordForms.Level,
        "How grave the findings of a check, or of a group of them, are."
    )
    {
        Example = "{speed/spring-overrun: note, cover: off}",
    };
    public static readonly NamesKey<string> Tolerances = new("tolerances", "tolerances", WordForms.Text, "How much a check lets pass.")
    {
        Example = "{spring-slack: 1+00}",
    };

    public static readonly KeyTable Table = new("the production's rules", [Levels, Tolerances]);
}
