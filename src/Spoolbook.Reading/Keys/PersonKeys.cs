using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

static class PersonKeys
{
    public static readonly ValueKey<string> Id = new("id", WordForms.Text, "A short name that the log uses.")
    {
        Required = true,
        Example = "loader",
    };
    public static readonly ValueKey<string> Name = new("name", WordForms.Text, "The full name.")
    {
        Required = true,
        Example = "Ada Example",
    };
    public static readonly ValueKey<string> Role = new("role", WordForms.Text, "What the person does.") { Example = "camera assistant" };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.person"), [Id, Name, Role]);
}
