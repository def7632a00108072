using System.CommandLine;
using Spoolbook.Reading.Schemas;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook schema</c>: the JSON Schema that editors use.</summary>
internal static class SchemaCommand
{
    public static Command Build(Surroundings around)
    {
        var kind = new Argument<string>("file")
        {
            Description = "Which file's schema: " + string.Join(", ", ProductionSchema.Kinds) + ".",
            DefaultValueFactory = _ => ProductionSchema.Kinds[0],
        };
        kind.AcceptOnlyFromAmong([.. ProductionSchema.Kinds]);
        var command = new Command("schema", "Prints the JSON Schema of a production's files, for editors that complete keys.") { kind };
        command.SetAction(parsed =>
        {
            around.Out.WriteLine(ProductionSchema.Json(parsed.GetRequiredValue(kind)));
            return ExitStatus.Well;
        });
        return command;
    }
}
