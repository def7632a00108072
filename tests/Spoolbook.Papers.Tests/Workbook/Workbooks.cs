using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Spoolbook.Papers.Facts;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Workbook;

namespace Spoolbook.Papers.Tests.Workbook;

/// <summary>Workbooks in the words that the house has.</summary>
static class Workbooks
{
    public static WordList English { get; } = Words("en");

    public static WordList German { get; } = Words("de");

    // Several tests look at the same ones.
    static readonly ConcurrentDictionary<(LedgerSource Source, WordList Words), Lazy<byte[]>> Made = new(new SameBooks());

    /// <summary>The workbook of some books, in English.</summary>
    public static byte[] Of(LedgerSource source) => Of(source, English);

    /// <summary>The same in German.</summary>
    public static byte[] GermanOf(LedgerSource source) => Of(source, German);

    static byte[] Of(LedgerSource source, WordList words) => Made.GetOrAdd((source, words), key => new(() => FootageWorkbook.Make(key.Source, key.Words))).Value;

    static WordList Words(string language) => WordList.Parse(new HouseTemplates().Find($"words.{language}.txt")!.Text);

    // A record would look at all that is in it.
    sealed class SameBooks : IEqualityComparer<(LedgerSource Source, WordList Words)>
    {
        public bool Equals((LedgerSource Source, WordList Words) one, (LedgerSource Source, WordList Words) other) =>
            ReferenceEquals(one.Source, other.Source) && ReferenceEquals(one.Words, other.Words);

        public int GetHashCode((LedgerSource Source, WordList Words) of) => RuntimeHelpers.GetHashCode(of.Source);
    }
}
