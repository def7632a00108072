using System.CommandLine;
using Spoolbook.Completing;
using Spoolbook.Papers;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook make</c>: checks, then writes every paper.</summary>
internal static class MakeCommand
{
    public static Command Build(CommandEnvironment around)
    {
        var production = CommonOptions.Production();
        var format = CommonOptions.Format();
        var outTo = Files.Out();
        var templates = Files.Templates(around);
        var draft = Files.Draft();
        var only = Only(around);
        var dryRun = new Option<bool>("--dry-run") { Description = "Say which papers would be written, and write nothing." };
        var command = new Command("make", "Checks a production and makes all its papers.")
        {
            production,
            outTo,
            only,
            templates,
            draft,
            dryRun,
            format,
        };
        var say = new SayOptions();
        say.AddTo(command);
        command.Want(production, around);
        command.SetAction(parsed =>
        {
            var making = new Making(
                parsed.Given(production, around),
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
            var result = making.Run(around);
            return result.Written is null || result.Found.Fails(making.IsStrict) ? ExitStatus.ErrorsFound : ExitStatus.Well;
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
