using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of a shooting day.</summary>
static class DayKeys
{
    public static readonly ValueKey<int> Day = new("day", NumberForms.FromOne, "Its number, from 1.") { Required = true, Example = "1" };
    public static readonly ValueKey<DateOnly> On = new("on", TimeForms.Date, "The date.") { Required = true, Example = "2026-10-02" };
    public static readonly ValueKey<string> Where = new("where", WordForms.Text, "The place.") { Example = "the landing stage" };
    public static readonly ValueKey<string> Note = new("note", WordForms.Text, "Remarks.") { Example = "rain until noon" };

    public static readonly KeyTable Table = new(Sentence.Of("common.owner.shooting-day"), [Day, On, Where, Note]);
}
