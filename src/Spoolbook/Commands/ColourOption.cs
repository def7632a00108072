using System.CommandLine;

namespace Spoolbook.Commands;

/// <summary><c>--color</c>, which every command has.</summary>
internal static class ColourOption
{
    const string Name = "--color";
    const string Alias = "--colour";

    /// <summary>The option.</summary>
    public static Option<ColourChoice> Build()
    {
        var option = Choice.Of<ColourChoice>(Name, "Colour: auto (on a terminal, unless NO_COLOR is set), always or never.");
        option.Aliases.Add(Alias);
        option.Recursive = true;
        return option;
    }

    /// <summary>The surroundings as a command line wants them. Commands are built with them, so this is read before the rest.</summary>
    public static CommandEnvironment In(string[] args, CommandEnvironment around)
    {
        var given = args.TakeWhile(word => word != "--").ToList();
        for (var at = 0; at < given.Count; at++)
        {
            var value =
                given[at] is Name or Alias ? given.ElementAtOrDefault(at + 1)
                : given[at].Split('=', 2) is [Name or Alias, var written] ? written
                : null;
            around = value?.ToLowerInvariant() switch
            {
                "always" => around with { Colour = true },
                "never" => around with { Colour = false },
                _ => around,
            };
        }

        return around;
    }
}
