using System.CommandLine;
using System.CommandLine.Completions;

namespace Spoolbook.Completing;

/// <summary>What a command line may go on with: commands, options, their values, and names out of the production.</summary>
/// <param name="root">The commands.</param>
internal sealed class Completer(Command root)
{
    /// <summary>Offered in place of names of files, which the shell knows itself.</summary>
    public const string Files = ":files";

    // A shell shows them in columns.
    const int LongestAbout = 60;

    /// <summary>The offers for the last of some words.</summary>
    /// <param name="typed">The words after the program's name, the last one as far as it is typed, or empty.</param>
    public IEnumerable<Offer> Of(IReadOnlyList<string> typed)
    {
        var words = Joined(typed);
        var (before, word) = (words[..^1], words[^1] == "\"\"" ? "" : words[^1]);
        var (command, options, place) = Find(before);
        if (word.StartsWith('-') && word.IndexOf('=', StringComparison.Ordinal) is > 0 and var at)
        {
            var named = options.FirstOrDefault(o => IsNamed(o, word[..at]));
            return named is null ? [] : Fitting(Values(named, before, word[(at + 1)..]), word[(at + 1)..], word[..(at + 1)]);
        }

        if (before.Count > 0 && options.FirstOrDefault(o => IsNamed(o, before[^1])) is { Arity.MinimumNumberOfValues: > 0 } wanting)
        {
            return Fitting(Values(wanting, before, word), word);
        }

        return word.StartsWith('-') ? Fitting(Names(options, before), word)
            : command.Subcommands.Any(c => !c.Hidden)
                ? Fitting(command.Subcommands.Where(c => !c.Hidden).Select(c => new Offer(c.Name, First(c.Description))), word)
            : Argument(command, place) is { } argument ? Fitting(Values(argument, before, word), word)
            : [];
    }

    // A shell may break words at signs that it knows: `--format=js` comes as three, and `R02:` as two.
    static List<string> Joined(IReadOnlyList<string> typed)
    {
        var words = new List<string>();
        foreach (var word in typed)
        {
            if (words.Count > 0 && (word is "=" or ":" || words[^1].StartsWith('-') && words[^1].EndsWith('=')))
            {
                words[^1] += word;
            }
            else
            {
                words.Add(word);
            }
        }

        return words.Count == 0 ? [""] : words;
    }

    // The command of the words, its options, and how many arguments of it are there already.
    (Command Command, List<Option> Options, int Place) Find(List<string> before)
    {
        var (command, place) = (root, 0);
        var options = root.Options.ToList();
        for (var at = 0; at < before.Count; at++)
        {
            if (command.Subcommands.FirstOrDefault(c => c.Name == before[at]) is { } inner)
            {
                (command, place) = (inner, 0);
                options = [.. options.Where(o => o.Recursive), .. inner.Options];
            }
            else if (options.FirstOrDefault(o => IsNamed(o, before[at])) is { } option)
            {
                at += option.Arity.MinimumNumberOfValues > 0 ? 1 : 0;
            }
            else if (!before[at].StartsWith('-'))
            {
                place++;
            }
        }

        return (command, options, place);
    }

    static Argument? Argument(Command command, int place) =>
        place < command.Arguments.Count ? command.Arguments[place]
        : command.Arguments.LastOrDefault() is { Arity.MaximumNumberOfValues: > 1 } last ? last
        : null;

    static bool IsNamed(Option option, string word) => option.Name == word || option.Aliases.Contains(word);

    // Each option once, but for those that may be given again.
    static IEnumerable<Offer> Names(IEnumerable<Option> options, List<string> before) =>
        from option in options
        where !option.Hidden && (option.Arity.MaximumNumberOfValues > 1 || !before.Exists(w => IsNamed(option, w)))
        from name in option.Aliases.Prepend(option.Name).Where(n => n.StartsWith("--", StringComparison.Ordinal)).Take(1)
        select new Offer(name, First(option.Description));

    static IEnumerable<Offer> Values(Option option, List<string> before, string word) =>
        option is IOffers known ? known.Offers(before, word)
        : option.ValueType == typeof(string) && option.CompletionSources.Count == 0 ? [new Offer(Files)]
        : option.GetCompletions(CompletionContext.Empty).Select(item => new Offer(item.Label));

    static IEnumerable<Offer> Values(Argument argument, List<string> before, string word) =>
        argument is IOffers known ? known.Offers(before, word)
        : argument.CompletionSources.Count == 0 ? [new Offer(Files)]
        : argument.GetCompletions(CompletionContext.Empty).Select(item => new Offer(item.Label));

    static IEnumerable<Offer> Fitting(IEnumerable<Offer> offers, string word, string before = "") =>
        from offer in offers
        where offer.Word == Files || offer.Word.StartsWith(word, StringComparison.OrdinalIgnoreCase)
        select offer.Word == Files ? offer : offer with { Word = before + offer.Word };

    static string First(string? description)
    {
        var text = description ?? "";
        var end = text.IndexOfAny(['.', ';', ':']);
        var first = end > 0 ? text[..end] : text;
        return first.Length <= LongestAbout ? first : first[..first.LastIndexOf(' ', LongestAbout)] + "…";
    }
}
