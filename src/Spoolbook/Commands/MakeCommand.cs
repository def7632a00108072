using System.CommandLine;
using Spoolbook.Completing;
using Spoolbook.Papers;
using Spoolbook.Schools;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook make</c>: checks, then writes every paper.</summary>
internal static class MakeCommand
{
    public static Command Build(CommandEnvironment around)
    {
        var productions = CommonOptions.Productions();
        var format = CommonOptions.Format();
        var outTo = Files.Out();
        var templates = Files.Templates(around);
        var draft = Files.Draft();
        var only = Only(around);
        var dryRun = new Option<bool>("--dry-run") { Description = "Say which papers would be written, and write nothing." };
        var command = new Command("make", "Checks a production, or several, and makes all papers.")
        {
            productions,
            outTo,
            only,
            templates,
            draft,
            dryRun,
            format,
        };
        var say = new SayOptions();
        say.AddTo(command);
        command.Want(productions, around);
        command.Validators.Add(given =>
        {
            if (given.GetValue(outTo) is not null && (given.GetValue(productions)?.Length ?? 0) > 1)
            {
                given.AddError(
                    "--out is one folder, and several productions are named. Leave it out: each has its papers in its own folder."
                );
            }
        });
        command.SetAction(parsed =>
        {
            var chosen = ChosenProductions.Of(parsed.GetValue(productions) ?? [], around);
            var making = new Making(
                chosen.Names.FirstOrDefault() ?? "",
                parsed.GetValue(outTo),
                parsed.GetValue(templates),
                parsed.GetValue(draft),
                parsed.GetValue(format)
            )
            {
                Loudness = say.Loudness(parsed),
                IsStrict = say.IsStrict(parsed),
                IsDry = parsed.GetValue(dryRun),
                Only = [.. (parsed.GetValue(only) ?? []).Select(Stem)],
            };
            if (!chosen.IsSeveral)
            {
                var result = making.Run(around);
                return result.Written is null || result.Found.Fails(making.IsStrict) ? ExitStatus.ErrorsFound : ExitStatus.Well;
            }

            if (making.To is not null)
            {
                return WrongUse.Print(
                    "--out is one folder, and this is a folder of productions. Leave it out: each has its papers in its own folder.",
                    around
                );
            }

            chosen.Settle("make", around);
            return new SeveralProductions(
                "making",
                chosen.Names,
                CommonOptions.Several(making.Format, makesPapers: true, making.Loudness),
                around,
                (name, own) => (making with { Production = name }).Make(own)
            )
            {
                Term =
                    chosen.School is { } school && !making.IsDry
                        ? new SchoolTerm(school, around) { Papers = new SchoolPapers(making.Templates, around).Make }
                        : null,
                IsStrict = making.IsStrict,
            }
                .Run()
                .Status;
        });
        return command;
    }

    static Option<string[]> Only(CommandEnvironment around)
    {
        var only = new OfferingOption<string[]>("--only", (before, _) => Offers(before, around))
        {
            Description =
                $"Make this paper and leave the others as they are: {string.Join(", ", PaperNames.Kinds)}, or one by the name of its file, "
                + "camera-report-R01. May be given again.",
            HelpName = "paper",
            Arity = ArgumentArity.OneOrMore,
        };
        only.Validators.Add(given =>
        {
            foreach (var name in given.Tokens.Select(token => Stem(token.Value)))
            {
                if (!PaperNames.Kinds.Any(kind => PaperNames.Means(kind, name)))
                {
                    given.AddError($"--only: {Choice.Objection(name, PaperNames.Kinds)}");
                }
            }
        });
        return only;
    }

    static IEnumerable<Offer> Offers(IReadOnlyList<string> before, CommandEnvironment around) =>
        PaperNames
            .Kinds.Concat(new LineOffers(around).Rolls(before).Select(roll => $"{PaperNames.CameraReport}-{roll}"))
            .Select(name => new Offer(name));

    // A file's name means its paper: people copy it from a listing.
    static string Stem(string name) =>
        Path.GetExtension(name) is ".pdf" or ".html" or ".xlsx" or ".csv" or ".json" ? name[..name.LastIndexOf('.')] : name;
}
