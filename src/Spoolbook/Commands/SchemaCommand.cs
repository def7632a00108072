using System.CommandLine;
using System.Text;
using Spoolbook.Printing;
using Spoolbook.Reading.Files;
using Spoolbook.Writing;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook schema</c>: the JSON Schema that editors use.</summary>
internal static class SchemaCommand
{
    const string Folder = WorkFolder.SchemasName;

    public static Command Build(CommandEnvironment around)
    {
        var kind = new Argument<string>("file")
        {
            Description = "Which file's schema: " + string.Join(", ", Schemas.Kinds) + ".",
            DefaultValueFactory = _ => Schemas.Kinds[0],
        };
        kind.AcceptOnlyFromAmong([.. Schemas.Kinds]);
        var into = new Option<string?>("--into")
        {
            Description =
                "Write the schemas of a production's files into the folder 'schemas' of this production instead, and say how its files "
                + "point to them. Without a name: the production that you are in.",
            HelpName = "production",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var command = new Command("schema", "Prints the JSON Schema of a file, for editors that complete keys and for programs.")
        {
            kind,
            into,
        };
        command.Validators.Add(given =>
        {
            if (given.GetResult(into) is not null && ProductionPlace.Objection(given.GetValue(into), around) is { } objection)
            {
                given.AddError(objection);
            }
        });
        command.SetAction(parsed =>
        {
            if (parsed.GetResult(into) is not null)
            {
                return Write(ProductionPlace.Of(parsed.GetValue(into), around)!, around);
            }

            around.Out.WriteLine(Schemas.Json(parsed.GetRequiredValue(kind)).TrimEnd());
            return ExitStatus.Well;
        });
        return command;
    }

    static int Write(string production, CommandEnvironment around)
    {
        var from = Path.Combine(around.Folder, production);
        if (!Directory.Exists(from))
        {
            around.Error.WriteLine($"spoolbook: there is no folder '{Plain.Escaped(production)}'.");
            return ExitStatus.WrongUse;
        }

        var folder = Path.Combine(from, Folder);
        var isSchool = SchoolPlace.IsSchool(from);
        var changes = (isSchool ? Schemas.OfSchool() : Schemas.OfFolder())
            .Select(s => Change(folder, s.File, Encoding.UTF8.GetBytes(s.Text)))
            .ToList();
        using (var work = WorkFolder.Open(folder, "schema", around))
        {
            work.Put([.. changes.Where(c => c.What != WriteResult.Same).Select(c => c.Change)]);
        }

        PaperFolderPrinter.Print([.. changes.Select(c => (c.Change.Name, c.What))], Folder, folder, around);
        around.Out.WriteLine("An editor finds them by the first line of a file:");
        if (isSchool)
        {
            around.Out.WriteLine($"  school.yaml   # yaml-language-server: $schema={Folder}/school.schema.json");
            return ExitStatus.Well;
        }

        around.Out.WriteLine($"  production.yaml   # yaml-language-server: $schema={Folder}/production.schema.json");
        around.Out.WriteLine($"  rolls/r01.yaml    # yaml-language-server: $schema=../{Folder}/roll.schema.json");
        return ExitStatus.Well;
    }

    static (FileChange Change, WriteResult What) Change(string folder, string name, byte[] text)
    {
        var before = FileState.Of(Path.Combine(folder, name));
        return (
            new FileChange(name, text, before),
            before == FileState.Nothing ? WriteResult.New
            : before == FileState.Of(text) ? WriteResult.Same
            : WriteResult.Changed
        );
    }
}
