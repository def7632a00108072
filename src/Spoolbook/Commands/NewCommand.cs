using System.CommandLine;
using Spoolbook.Beginning;
using Spoolbook.Entry;
using Spoolbook.Printing;
using Spoolbook.Reading;
using Spoolbook.Reading.Files;
using Spoolbook.Writing;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook new</c>: begins a production.</summary>
internal static class NewCommand
{
    public static Command Build(CommandEnvironment around)
    {
        var folder = new Argument<string>("folder") { Description = "The folder to begin it in; it must be empty, or not be there yet." };
        var from = new Option<string?>("--from")
        {
            Description = "An earlier production, to take kit, people, lab, agreements and rates over from.",
            HelpName = "production",
        };
        var shots = new Option<string?>("--shots")
        {
            Description =
                "A shot list: a .csv with heads (scene, shot, what, screen, light), or a shot a line (1A The pans, wide, 12s); "
                + "- for standard input.",
            HelpName = "file",
        };
        var yes = new Option<bool>("--yes") { Description = "Ask nothing: what is not given stays open, for you to fill in." };
        var command = new Command("new", "Begins a production: asks what it must know, and writes its files with comments that teach.")
        {
            folder,
            from,
            shots,
            yes,
        };
        var questions = NewQuestions.All.ToDictionary(
            q => q,
            q => new Option<string[]>("--" + q.Option) { Description = q.About, AllowMultipleArgumentsPerToken = false }
        );
        foreach (var option in questions.Values)
        {
            option.Arity = ArgumentArity.OneOrMore;
            command.Add(option);
        }

        command.Validators.Add(given =>
        {
            if (given.GetValue(folder) is { } to && NewFolder.Objection(Path.Combine(around.Folder, to), to) is { } objection)
            {
                given.AddError(objection);
            }

            if (given.GetValue(from) is { } earlier && ProductionPlace.Objection(earlier, around) is { } missing)
            {
                given.AddError(missing);
            }

            if (given.GetValue(shots) is { } list and not CommonOptions.StandardInput && !File.Exists(Path.Combine(around.Folder, list)))
            {
                given.AddError($"there is no file '{list}' here.");
            }
        });
        command.SetAction(parsed =>
        {
            var to = parsed.GetRequiredValue(folder);
            var title = NewQuestions.TitleOf(Path.GetFullPath(Path.Combine(around.Folder, to)));
            var answers = new NewAnswers { Title = title, Code = "" };
            if (parsed.GetValue(from) is { } earlier)
            {
                if (Earlier(earlier, around) is not { } taken)
                {
                    return ExitStatus.ErrorsFound;
                }

                answers = answers with { From = taken };
            }

            if (parsed.GetValue(shots) is { } list)
            {
                if (Shots(list, around) is not { } listed)
                {
                    return ExitStatus.ErrorsFound;
                }

                answers = answers with { Shots = listed.Shots };
            }

            // The code follows the title, so it is made up only where neither is asked for.
            var given = questions.Where(q => parsed.GetResult(q.Value) is not null).Select(q => q.Key.Option).ToHashSet();
            foreach (var (question, option) in questions.Where(q => given.Contains(q.Key.Option)))
            {
                foreach (var text in parsed.GetValue(option) ?? [])
                {
                    var (more, objection) = BegunCheck.Take(question, answers with { Code = CodeOf(answers) }, text);
                    if (more is null)
                    {
                        return WrongUse.Print([$"--{question.Option} '{text}': {objection}"], parsed, around);
                    }

                    answers = question.Option == "title" ? more with { Code = "" } : more;
                }
            }

            if (!parsed.GetValue(yes))
            {
                if (new NewInterview(around).Ask(answers, given) is not { } asked)
                {
                    return ExitStatus.WrongUse;
                }

                answers = asked;
            }

            return Write(to, answers with { Code = CodeOf(answers) }, around);
        });
        return command;
    }

    static string CodeOf(NewAnswers answers) => answers.Code.Length > 0 ? answers.Code : NewQuestions.CodeOf(answers.Title);

    static EarlierProduction? Earlier(string named, CommandEnvironment around)
    {
        var files = new FolderFiles(Path.Combine(around.Folder, ProductionPlace.Of(named, around)!));
        if (ProductionReader.Read(files).Production is { } production)
        {
            return EarlierProduction.Of(files, production);
        }

        around.Error.WriteLine($"spoolbook: '{Plain.Escaped(named)}' cannot be read: spoolbook check says why. Nothing was written.");
        return null;
    }

    static ShotList? Shots(string named, CommandEnvironment around)
    {
        if (named == CommonOptions.StandardInput)
        {
            return Shots(CommonOptions.StandardInputName, around.ReadBytes(ShotTable.MostBytes + 1), around);
        }

        var path = RealPath.Of(Path.Combine(around.Folder, named));
        if (OrdinaryFile.InsteadOf(path) is not null || new FileInfo(path).Length > ShotTable.MostBytes)
        {
            around.Error.WriteLine(
                $"spoolbook: '{Plain.Escaped(named)}' is no shot list: write a text of at most 1 MB. Nothing was written."
            );
            return null;
        }

        return Shots(Path.GetFileName(named), File.ReadAllBytes(path), around);
    }

    static ShotList? Shots(string name, byte[] bytes, CommandEnvironment around)
    {
        var list = ShotTable.Read(name, bytes);
        foreach (var wrong in list.Refused.Concat(list.Notes))
        {
            around.Error.WriteLine($"{Plain.Escaped(wrong.Where)}: {Plain.Escaped(wrong.Message)} {Plain.Escaped(wrong.Help)}");
        }

        if (list.Refused.IsEmpty)
        {
            return list;
        }

        around.Error.WriteLine("Nothing was written.");
        return null;
    }

    static int Write(string to, NewAnswers answers, CommandEnvironment around)
    {
        if (BegunCheck.FirstError(answers) is { } wrong)
        {
            around.Error.WriteLine($"spoolbook: {Plain.Escaped(BegunCheck.Said(wrong))} [{wrong.Check}] Nothing was written.");
            return ExitStatus.ErrorsFound;
        }

        var folder = Path.GetFullPath(Path.Combine(around.Folder, to));
        var files = BegunProduction
            .FilesOf(answers)
            .Concat(Schemas.OfFolder().Select(s => new BegunFile($"{WorkFolder.SchemasName}/{s.File}", s.Text)))
            .ToList();
        NewFolder.Write(folder, files, around);
        new PaperFolderPrinter(around).Print([.. files.Select(f => (f.Name, WriteResult.New))], "files", folder);
        var at = Plain.Escaped(Path.GetRelativePath(around.Folder, folder));
        around.Out.WriteLine();
        around.Out.WriteLine(at == "." ? "Go on with:" : $"Go on with: cd {at}");
        around.Out.WriteLine("  spoolbook check   what is wrong, and what it cannot judge yet");
        around.Out.WriteLine("  spoolbook load    when a roll goes into a camera: asks, and begins its file");
        around.Out.WriteLine("  spoolbook log     a line for each take, wind, rewind as it happens");
        around.Out.WriteLine("  rolls/how-to.txt  such lines, and how a roll is written by hand");
        return ExitStatus.Well;
    }
}
