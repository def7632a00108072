using Spoolbook.Asking;
using Spoolbook.Completing;
using Spoolbook.Entry.Lines;
using Spoolbook.Reading.Files;

namespace Spoolbook.Commands;

/// <summary>Names out of the production for a shell to offer: slates, lenses, rolls.</summary>
internal sealed class LineOffers(CommandEnvironment around)
{
    const string In = "--in";

    /// <summary>The words that a line may go on with.</summary>
    /// <param name="before">The words before, the command first.</param>
    public IEnumerable<Offer> OfLine(IReadOnlyList<string> before, string word)
    {
        if (Book(before)?.Books is not { } books)
        {
            return [];
        }

        var at = before.ToList().IndexOf(In);
        var line = before
            .Where((w, place) => place > 0 && (at < 0 || place != at + 1) && !w.StartsWith("--", StringComparison.Ordinal))
            .Append(word);
        var verb = before[0] is "load" or "unload" ? before[0] + " " : "";
        return LineCompletion
            .Of(verb + string.Join(' ', line), LineContext.Of(books, DateOnly.FromDateTime(around.Now())))
            .Select(w => new Offer(w));
    }

    /// <summary>The names of the production's rolls; empty where none can be read.</summary>
    public IEnumerable<string> Rolls(IReadOnlyList<string> before) =>
        Book(before)?.Book is { } book ? book.Rolls.Select(r => r.Roll.Name.Value) : [];

    // A shell must not be made to wait, nor be told what is wrong.
    CheckedProduction? Book(IReadOnlyList<string> before)
    {
        var at = before.ToList().IndexOf(In);
        var named = at >= 0 && at + 1 < before.Count ? before[at + 1] : null;
        if (ProductionPlace.Objection(named, around) is not null)
        {
            return null;
        }

        return Pipeline.Run(new FolderFiles(Path.Combine(around.Folder, ProductionPlace.Of(named, around)!))).Found;
    }
}
