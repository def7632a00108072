using System.CommandLine;
using System.CommandLine.Completions;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Commands;

/// <summary>An option with a few fixed values, which are typed, listed and refused in small letters.</summary>
internal static class Choice
{
    /// <summary>Such an option; the first value is meant where none is given.</summary>
    public static Option<T> Of<T>(string name, string description)
        where T : struct, Enum
    {
        var names = Names<T>();
        var option = new Option<T>(name)
        {
            Description = $"{description} Usually {names[0]}.",
            HelpName = string.Join('|', names),
            Arity = ArgumentArity.ExactlyOne,
            CustomParser = result =>
            {
                var written = result.Tokens[0].Value;
                if (names.IndexOf(written.ToLowerInvariant()) is >= 0 and var at)
                {
                    return Enum.GetValues<T>()[at];
                }

                result.AddError($"{name}: {Objection(written, names)}");
                return default;
            },
        };
        Offer(option, names);
        return option;
    }

    /// <summary>Lets an option have only some names.</summary>
    public static void Among(this Option<string?> option, IReadOnlyCollection<string> names)
    {
        option.HelpName = string.Join('|', names);
        Offer(option, names);
        option.Validators.Add(given =>
        {
            if (given.Tokens is [{ Value: var written }] && !names.Contains(written))
            {
                given.AddError($"{option.Name}: {Objection(written, names)}");
            }
        });
    }

    /// <summary>Why a word is none of some names, and what to write.</summary>
    public static string Objection(string written, IReadOnlyCollection<string> names) =>
        Likeness.Nearest(written, names) is { } near
            ? $"there is no '{written}'. Did you mean {near}?"
            : $"there is no '{written}': write {Listed(names)}.";

    // In place of what the library would offer, which are the names in the code.
    static void Offer(Option option, IReadOnlyCollection<string> names)
    {
        option.CompletionSources.Clear();
        option.CompletionSources.Add(_ => names.Select(n => new CompletionItem(n)));
    }

    static string Listed(IReadOnlyCollection<string> names) =>
        names.Count < 2 ? string.Concat(names) : $"{string.Join(", ", names.Take(names.Count - 1))} or {names.Last()}";

    static List<string> Names<T>()
        where T : struct, Enum => [.. Enum.GetNames<T>().Select(n => n.ToLowerInvariant())];
}
