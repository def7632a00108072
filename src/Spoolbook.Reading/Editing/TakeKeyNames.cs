using System.Collections.Immutable;
using Spoolbook.Reading.Forms;
using Spoolbook.Reading.Keys;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Editing;

/// <summary>The keys and words of a take, for code that writes one.</summary>
public static class TakeKeyNames
{
    public static string Scene => TakeKeys.Scene.Name;

    public static string Shot => TakeKeys.Shot.Name;

    public static string Number => TakeKeys.Number.Name;

    public static string From => TakeKeys.From.Name;

    public static string To => TakeKeys.To.Name;

    public static string Frames => TakeKeys.Frames.Name;

    public static string Speed => TakeKeys.Speed.Name;

    public static string Lens => TakeKeys.Lens.Name;

    public static string Stop => TakeKeys.Stop.Name;

    public static string Filter => TakeKeys.Filter.Name;

    public static string Focus => TakeKeys.Focus.Name;

    public static string Mark => TakeKeys.Mark.Name;

    public static string On => TakeKeys.On.Name;

    public static string Day => EntryKeys.Day.Name;

    public static string Note => EntryKeys.Note.Name;

    /// <summary>The keys that have no column of the Takes sheet: a table brings them in under their own names.</summary>
    public static ImmutableArray<string> WithoutColumn { get; } =
    [
        .. TakeKeys
            .Table.Keys.Select(k => k.Name)
            .Except([Scene, Shot, Number, From, To, Frames, Speed, Lens, Stop, Filter, Focus, Mark, On, Day, Note, EntryKeys.Line.Name]),
    ];

    public static string Of(Mark mark) => WordForms.MarkWords.First(m => m.Value == mark).Word;

    /// <summary>The mark of a word or a letter, in either case; null where there is none.</summary>
    public static Mark? MarkOf(string word)
    {
        foreach (var (written, mark) in WordForms.MarkWords.Concat(WordForms.MarkLetters))
        {
            if (written.Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                return mark;
            }
        }

        return null;
    }
}
