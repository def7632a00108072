using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of the production's own rules.</summary>
static class HouseRulesKeys
{
    public static readonly NamesKey<Level?> Levels = new(
        "levels",
        Sentence.Of("common.names.levels"),
        WordForms.Level,
        "How serious the findings of a check, or of a group of them, are."
    )
    {
        Example = "{speed/spring-overrun: note, cover: off}",
    };
    public static readonly NamesKey<string> Tolerances = new(
        "tolerances",
        Sentence.Of("common.names.tolerances"),
        WordForms.Text,
        "How much a check lets pass."
    )
    {
        Example = "{spring-slack: 1+00}",
    };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.rules"), [Levels, Tolerances]);
}
