using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of the loan, for the whole kit.</summary>
static class LoanKeys
{
    public static readonly ValueKey<string> Owner = new("owner", WordForms.Text, "Whose the kit is.") { Example = "Film department" };
    public static readonly ValueKey<string> BorrowedBy = new("borrowed-by", WordForms.Text, "Who borrowed it, by id.")
    {
        Example = "assistant",
    };
    public static readonly ValueKey<DateOnly> On = new("on", TimeForms.Date, "The day that it went out.") { Example = "2026-10-01" };
    public static readonly ValueKey<DateOnly> Due = new("due", TimeForms.Date, "The day that it must be back.") { Example = "2026-10-07" };
    public static readonly ValueKey<DateOnly> BackOn = new(
        "back-on",
        TimeForms.Date,
        "The day that it came back; not written while it is out."
    )
    {
        Example = "2026-10-06",
    };
    public static readonly ValuesKey<string> Care = new(
        "care",
        WordForms.Text,
        "What the owner wants done before it goes back: free lines."
    )
    {
        Example = "[Ring the stores the day before]",
    };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.loan"), [Owner, BorrowedBy, On, Due, BackOn, Care]);
}
