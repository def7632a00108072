using System.Collections.Immutable;
using Spoolbook.Reading.Forms;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of everything that goes out and must come back.</summary>
static class ReturnKeys
{
    public static readonly ValueKey<int> Out = new("out", NumberForms.FromZero, "How many went out; 1 unless written.") { Example = "1" };
    public static readonly ValueKey<int> Back = new("back", NumberForms.FromZero, "How many came back; not written while the kit is out.")
    {
        Example = "1",
    };
    public static readonly ValueKey<string> Note = new("note", WordForms.Text, "Remarks on its return.")
    {
        Example = "one left at the boathouse",
    };
    public static readonly ValueKey<string> Kept = new("kept", WordForms.Text, "Where it is kept: its case, and its slot there.")
    {
        Example = "filter pouch, slot 2",
    };
    public static readonly ValueKey<decimal> Worth = new(
        "value",
        NumberForms.Money,
        "What one of them is worth, in the currency of the rates."
    )
    {
        Example = "240",
    };
    public static readonly ValueKey<string> Owner = new("owner", WordForms.Text, "Whose it is, where it is not the owner's of the loan.")
    {
        Example = "Film department",
    };
    public static readonly ValueKey<string> BorrowedBy = new(
        "borrowed-by",
        WordForms.Text,
        "Who borrowed it, by id, where it is not the borrower of the loan."
    )
    {
        Example = "assistant",
    };
    public static readonly ValueKey<DateOnly> Due = new("due", TimeForms.Date, "The day that it must be back, where it is not the loan's.")
    {
        Example = "2026-10-07",
    };
    public static readonly ValueKey<string> ConditionOut = new("condition-out", WordForms.Text, "What state it went out in.")
    {
        Example = "scratch on the hood",
    };
    public static readonly ValueKey<string> ConditionBack = new("condition-back", WordForms.Text, "What state it came back in.")
    {
        Example = "as it went out",
    };

    public static readonly ImmutableArray<Key> Common = [Out, Back, Note, Kept, Worth, Owner, BorrowedBy, Due, ConditionOut, ConditionBack];
}
