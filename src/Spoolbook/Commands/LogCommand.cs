using System.CommandLine;
using Spoolbook.Entry.Lines;
using Spoolbook.Reading.Files;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook log</c>: takes what is said on set into the record, a line for each thing that happens.</summary>
internal static class LogCommand
{
    const string Piped = CommonOptions.StandardInput;

    public static Command Build(CommandEnvironment around)
    {
        var options = new LogOptions(around);
        var undo = new Option<bool>("--undo") { Description = "Take the last log back: a line, or a file of them." };
        var command = options.Command(
            "log",
            "Writes what happens to a roll into its file: a line for each take, rewind, run-off.",
            "What happened: 1A/4 to 70 16fps f8 25mm G. Or a file of such lines, or - for lines from a pipe. Without any, it asks for them."
        );
        command.Add(undo);
        command.Validators.Add(given =>
        {
            if (given.GetValue(undo) && given.GetValue(options.Words) is { Length: > 0 })
            {
                given.AddError("--undo takes no line: spoolbook log --undo.");
            }
        });
        command.SetAction(parsed =>
        {
            var (run, words) = (new LogRun(options.Settings(parsed), around), parsed.GetValue(options.Words) ?? []);
            return parsed.GetValue(undo) ? run.Undo()
                : words is [] && parsed.GetValue(options.Format) == LogFormat.Text ? run.Prompt(LogOptions.Lines(around))
                : words is [] or [Piped] ? run.Take(Lines(Piped, around.In.ReadToEnd()), "lines from a pipe")
                : words is [var file] && IsFile(file, around) ? TakeFile(run, file, around)
                : run.Take(string.Join(' ', words));
        });
        return command;
    }

    // A verb alone is a line, whatever lies about.
    static bool IsFile(string word, CommandEnvironment around) =>
        !word.Contains(' ', StringComparison.Ordinal) && word != "wind" && File.Exists(Path.Combine(around.Folder, word));

    static int TakeFile(LogRun run, string file, CommandEnvironment around)
    {
        var real = RealPath.Of(Path.Combine(around.Folder, file));
        if (OrdinaryFile.InsteadOf(real) is { } other)
        {
            return WrongUse.Print($"'{file}' is {other} and no file.", around);
        }

        return new FileInfo(real).Length > FileText.MostBytes
            ? WrongUse.Print($"'{file}' is longer than anybody logs.", around)
            : run.Take(Lines(Path.GetFileName(file), File.ReadAllText(real)), Path.GetFileName(file));
    }

    static System.Collections.Immutable.ImmutableArray<LineText> Lines(string file, string text) =>
        [.. text.ReplaceLineEndings("\n").Split('\n').Select((line, i) => new LineText(file, i + 1, line))];
}
