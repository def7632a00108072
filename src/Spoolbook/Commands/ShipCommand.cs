using System.CommandLine;
using Spoolbook.Shipping;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Commands;

/// <summary><c>spoolbook ship</c>: one consignment to each lab, out of all productions of a school.</summary>
internal static class ShipCommand
{
    // A pallet holds fewer.
    const int MostInABox = 500;

    public static Command Build(CommandEnvironment around)
    {
        var folder = SchoolOptions.Folder(around);
        var lab = new Option<string?>("--lab") { Description = "Ship to this lab only; to each that productions name unless given." };
        var sent = SchoolOptions.Day("--sent", "The day on which it goes; today unless given.");
        var box = new Option<int>("--box")
        {
            Description = "How many cans a box holds.",
            HelpName = "cans",
            DefaultValueFactory = _ => ShipmentWishes.UsualBox,
        };
        box.Validators.Add(given =>
        {
            if (given.Errors.Any() || given.GetValueOrDefault<int>() is < 1 or > MostInABox)
            {
                given.AddError($"--box wants how many cans a box holds: a number from 1 to {MostInABox}.");
            }
        });
        var share = new Option<SharedBy>("--share-by")
        {
            Description = "What shipping, and what an order lacks to a minimum, are shared by: feet, cans or productions.",
            DefaultValueFactory = _ => SharedBy.Feet,
        };
        var without = new Option<string[]>("--without")
        {
            Description = "Productions that stay here this time, by folder or code.",
            HelpName = "production",
            AllowMultipleArgumentsPerToken = true,
        };
        var outTo = SchoolOptions.Out();
        var templates = Files.Templates(around);
        var dryRun = new Option<bool>("--dry-run") { Description = "Show what would go, and write nothing." };
        var command = new Command(
            "ship",
            "Makes one consignment a lab out of all productions below a folder: order, labels, packing list, record."
        )
        {
            folder,
            lab,
            sent,
            box,
            share,
            without,
            outTo,
            templates,
            dryRun,
        };
        command.SetAction(parsed =>
            new ShipRun(
                new ShipSettings(
                    parsed.GetRequiredValue(folder),
                    parsed.GetValue(lab),
                    SchoolOptions.DayOf(parsed.GetValue(sent)),
                    parsed.GetValue(box),
                    parsed.GetValue(share),
                    parsed.GetValue(without) ?? [],
                    SchoolOptions.Plain(parsed.GetRequiredValue(outTo)),
                    parsed.GetValue(templates),
                    parsed.GetValue(dryRun)
                ),
                around
            ).Run()
        );
        return command;
    }
}
