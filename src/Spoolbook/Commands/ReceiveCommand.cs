using System.CommandLine;
using System.Globalization;
using Spoolbook.Shipping;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook receive</c>: what came back from the lab, and what is missing.</summary>
internal static class ReceiveCommand
{
    // Printer lights go from 1 to 50 (common practice).
    const int MostLights = 50;

    public static Command Build(CommandEnvironment around)
    {
        var folder = SchoolOptions.Folder(around);
        var cans = new Argument<string[]>("cans")
        {
            Description =
                "Cans that came back: their codes as typed or as a hand-held reader reads them, or their numbers on the packing list. "
                + "- reads one a line from standard input. Without any it only says what is missing.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var shipment = new Option<string?>("--shipment")
        {
            Description = "The consignment that is meant, by its name or how it begins.",
            HelpName = "name",
        };
        var box = new Option<int?>("--box") { Description = "All that is missing of a box.", HelpName = "number" };
        var all = new Option<bool>("--all") { Description = "All that is missing." };
        var unprocessed = Cans("--unprocessed", "Cans that the lab sent back as they went: they may go again.");
        var goesOn = Cans("--goes-on", "Cans that go to a lab once more, for a scan say: they may go again.");
        var on = SchoolOptions.Day("--on", "The day on which they came back; today unless given.");
        var by = new Option<string?>("--by") { Description = "Who took them in.", HelpName = "name" };
        var lights = new Option<string[]>("--lights")
        {
            Description = "Printer lights of a take of the one can, red-green-blue: \"7B/1 27-31-25\".",
            HelpName = "slate lights",
        };
        lights.Validators.Add(given =>
        {
            foreach (var text in given.GetValueOrDefault<string[]>() ?? [])
            {
                if (!AreLights(text))
                {
                    given.AddError(
                        $"'{text}' is no printer light: write slate and red-green-blue from 1 to {MostLights}, as \"7B/1 27-31-25\"."
                    );
                }
            }
        });
        var note = new Option<string[]>("--note")
        {
            Description = "What was found on the one can's film, with its footage in front: \"31+12 Scratch on the left\".",
            HelpName = "text",
        };
        var outTo = SchoolOptions.Out();
        var command = new Command("receive", "Marks which cans came back from the lab, and says which are missing or overdue.")
        {
            folder,
            cans,
            shipment,
            box,
            all,
            unprocessed,
            goesOn,
            on,
            by,
            lights,
            note,
            outTo,
        };
        command.SetAction(parsed =>
            new ReceiveRun(
                new ReceiveSettings(
                    parsed.GetRequiredValue(folder),
                    SchoolOptions.Plain(parsed.GetRequiredValue(outTo)),
                    parsed.GetValue(cans) ?? [],
                    parsed.GetValue(unprocessed) ?? [],
                    parsed.GetValue(goesOn) ?? [],
                    parsed.GetValue(shipment),
                    parsed.GetValue(box),
                    parsed.GetValue(all),
                    SchoolOptions.DayOf(parsed.GetValue(on)),
                    parsed.GetValue(by),
                    parsed.GetValue(lights) ?? [],
                    parsed.GetValue(note) ?? []
                ),
                around
            ).Run()
        );
        return command;
    }

    static Option<string[]> Cans(string name, string description) =>
        new(name)
        {
            Description = description,
            HelpName = "can",
            AllowMultipleArgumentsPerToken = true,
        };

    static bool AreLights(string text) =>
        text.Split(' ', 2, StringSplitOptions.TrimEntries) is [{ Length: > 0 }, var lights]
        && lights.Split('-') is { Length: 3 } three
        && three.All(l =>
            int.TryParse(l, NumberStyles.None, CultureInfo.InvariantCulture, out var light) && light is >= 1 and <= MostLights
        );
}
