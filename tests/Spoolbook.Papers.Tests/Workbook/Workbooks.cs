using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Spoolbook.Papers.Ledger;
using Spoolbook.Papers.Pages;
using Spoolbook.Papers.Wording;
using Spoolbook.Papers.Workbook;

namespace Spoolbook.Papers.Tests.Workbook;

/// <summary>Workbooks in the house's own words.</summary>
static class Workbooks
{
    public static Translations English { get; } = Words("en");

    public static Translations German { get; } = Words("de");

    // Several tests share them.
    static readonly ConcurrentDictionary<(LedgerSource Source, Translations Words), Lazy<byte[]>> Made = new(new SameBooks());

    /// <summary>The workbook of some books, in English.</summary>
    public static byte[] Of(LedgerSource source) => Of(source, English);

    /// <summary>The same in German.</summary>
    public static byte[] GermanOf(LedgerSource source) => Of(source, German);

    static byte[] Of(LedgerSource source, Translations words) =>
        Made.GetOrAdd((source, words), key => new(() => FootageWorkbook.Make(key.Source, key.Words))).Value;

    static Translations Words(string language) => Translations.Parse(new HouseTemplates().Find($"words.{language}.txt")!.Text);

    // Comparing as a record would compare everything in it.
    sealed class SameBooks : IEqualityComparer<(LedgerSource Source, Translations Words)>
    {
        public bool Equals((LedgerSource Source, Translations Words) one, (LedgerSource Source, Translations Words) other) =>
            ReferenceEquals(one.Source, other.Source) && ReferenceEquals(one.Words, other.Words);

        public int GetHashCode((LedgerSource Source, Translations Words) of) => RuntimeHelpers.GetHashCode(of.Source);
    }
}
