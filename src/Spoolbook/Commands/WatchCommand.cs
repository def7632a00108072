using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Spoolbook.Papers;
using Spoolbook.Printing;
using Spoolbook.Watching;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook watch</c>: makes the papers anew whenever a file of the production is saved.</summary>
internal static class WatchCommand
{
    static readonly TimeSpan _again = TimeSpan.FromSeconds(2);

    public static Command Build(CommandEnvironment around)
    {
        var production = CommonOptions.Production();
        var outTo = Files.Out();
        var templates = Files.Templates(around);
        var draft = Files.Draft();
        var serve = new Option<int?>("--serve")
        {
            Description =
                $"Show the papers to a browser on this machine, at this port ({PaperServer.UsualPort}, or one that is free, unless given); "
                + "pages load themselves anew.",
            HelpName = "port",
            Arity = ArgumentArity.ZeroOrOne,
        };
        serve.Validators.Add(given =>
        {
            if (given.Tokens.Count > 0 && given.GetValueOrDefault<int?>() is not (>= 0 and <= 65_535))
            {
                given.AddError("a port is a number up to 65535.");
            }
        });
        var command = new Command("watch", "Checks and remakes the papers at every save, until Ctrl-C.")
        {
            production,
            outTo,
            templates,
            draft,
            serve,
        };
        command.Want(production, around);
        command.SetAction(parsed =>
        {
            var from = parsed.Given(production, around);
            var making = new Making(from, parsed.GetValue(outTo), parsed.GetValue(templates), parsed.GetValue(draft), FindingFormat.Text)
            {
                IsBrief = true,
                Before = new PrintedBefore(),
            };
            using var interrupt = new Interrupt(around.Stop);
            using var server = parsed.GetResult(serve) is null ? null : PaperServer.Start(making.Folder(around), parsed.GetValue(serve));
            if (server is not null)
            {
                around.Out.WriteLine(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"The papers are at http://127.0.0.1:{server.Port}/ (for this machine only)."
                    )
                );
            }

            Watch(making, server, around, interrupt.Token);
            return ExitStatus.Well;
        });
        return command;
    }

    static void Watch(Making making, PaperServer? server, CommandEnvironment around, CancellationToken stop)
    {
        var ink = new Ink(around.Colour);
        var papers = making.Folder(around);
        var production = Path.GetFullPath(Path.Combine(around.Folder, making.Production));
        var templates = making.Templates is { } own ? Path.GetFullPath(Path.Combine(around.Folder, own)) : null;
        var watch = new SaveWatch(() => FolderSnapshot.Of(production, templates, [papers]), time => !stop.WaitHandle.WaitOne(time));
        string? failed = null;
        failed = Make();
        while (watch.Next(failed is null ? null : _again) is { } changed)
        {
            if (!watch.Exists)
            {
                Say($"{Plain.Escaped(making.Production)} is gone: waiting for it to come back.");
                failed = null;
                continue;
            }

            if (!changed.IsEmpty)
            {
                Say(Names(changed));
            }

            failed = Make();
        }

        around.Out.WriteLine();
        around.Out.WriteLine("Stopped watching.");

        // Papers that could not be written for a reason outside are tried again, and that is said once.
        string? Make()
        {
            if (!Path.Exists(production))
            {
                return null;
            }

            try
            {
                var now = around with { Made = around.MadeNow() };
                if (making.Run(now).Written?.Files.Any(f => f.What != WriteResult.Same) == true)
                {
                    server?.Remade();
                }

                around.Out.Flush();
                return null;
            }
            catch (Exception outside) when (outside is IOException or UnauthorizedAccessException)
            {
                if (outside.Message != failed)
                {
                    around.Error.WriteLine($"spoolbook: {Plain.Escaped(outside.Message)}");
                }

                return outside.Message;
            }
        }

        void Say(string what)
        {
            around.Out.WriteLine();
            around.Out.WriteLine(ink.Bold($"{DateTime.Now.ToString("HH:mm:ss", CultureInfo.InvariantCulture)}  {what}"));
            around.Out.Flush();
        }
    }

    static string Names(ImmutableArray<string> changed) =>
        Plain.Escaped(changed.Length > 4 ? $"{changed.Length} files changed" : $"{string.Join(", ", changed)} changed");
}
