using System.CommandLine;
using System.Text;
using Spoolbook.Completing;
using Spoolbook.Printing;
using Spoolbook.Reading.Editing;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Records;
using Spoolbook.Writing;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook schema</c>: the JSON Schema that editors use.</summary>
internal static class SchemaCommand
{
    const string Folder = WorkFolder.SchemasName;

    public static Command Build(CommandEnvironment around)
    {
        var kind = new OfferingArgument<string>("file", (_, _) => Schemas.Kinds.Select(k => new Offer(k)))
        {
            Description = "Which file's schema: " + string.Join(", ", Schemas.Kinds) + ".",
            DefaultValueFactory = _ => Schemas.Kinds[0],
        };
        kind.Validators.Add(given =>
        {
            if (given.Tokens is [{ Value: var named }] && !Schemas.Kinds.Contains(named))
            {
                given.AddError(Choice.Objection(named, Schemas.Kinds));
            }
        });
        var into = new Option<string?>("--into")
        {
            Description =
                "Write the schemas of a production's files into the folder 'schemas' of this production instead, and into the first line "
                + "of each file where its schema is. Without a name: the production that you are in.",
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

        var isSchool = SchoolPlace.IsSchool(from);
        var schemas = (isSchool ? Schemas.OfSchool() : Schemas.OfFolder()).ToList();
        var files = isSchool ? [Department.FileName] : new FolderFiles(from).Names;
        using (var work = WorkFolder.Open(from, "schema", around))
        {
            var written = schemas.Select(s => Change(from, $"{Folder}/{s.File}", Encoding.UTF8.GetBytes(s.Text)));
            var changes = written.Concat(files.SelectMany(name => Pointed(from, name, schemas))).ToList();
            if (!Directory.Exists(Path.Combine(from, Folder)))
            {
                around.Disk.MakeFolder(Path.Combine(from, Folder));
            }

            work.Put([.. changes.Where(c => c.What != WriteResult.Same).Select(c => c.Change)]);
            new PaperFolderPrinter(around).Print([.. changes.Select(c => (c.Change.Name, c.What))], "files", from);
        }

        around.Out.WriteLine("An editor that knows the YAML language server finds a schema by the first line of a file.");
        return ExitStatus.Well;
    }

    // A file of the production with a first line that names its schema; nothing where none is made for it.
    static IEnumerable<(FileChange Change, WriteResult What)> Pointed(
        string production,
        string name,
        IReadOnlyList<(string File, string Text)> schemas
    )
    {
        var isRoll = name.StartsWith(SheetNames.Rolls + "/", StringComparison.Ordinal);
        var schema = (isRoll ? "roll" : SheetNames.StemOf(name).ToLowerInvariant()) + ".schema.json";
        var path = Path.Combine(production, name);
        var before = FileState.Of(path);
        if (before == FileState.Nothing || before == FileState.Link || schemas.All(s => s.File != schema))
        {
            yield break;
        }

        var bytes = FileState.Bytes(path);
        yield return SchemaLine.Before(bytes, (isRoll ? "../" : "") + $"{Folder}/{schema}") is { } pointed
            ? (new FileChange(name, pointed, before), WriteResult.Changed)
            : (new FileChange(name, bytes, before), WriteResult.Same);
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
