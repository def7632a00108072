using System.Collections.Immutable;
using Spoolbook.Film;
using Spoolbook.Reading.Forms;
using Spoolbook.Reading.Keys;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Editing;

/// <summary>A key of a log entry, of loading or of unloading, for code that writes one.</summary>
public sealed class EntryKey
{
    readonly Form _form;

    /// <param name="name">Its name in a line.</param>
    internal EntryKey(Key key, string name)
    {
        var value = (IValueKey)key;
        (Name, Description, Example, Required) = (name, key.Description, key.Example, key.Required);
        (_form, Many) = (value.Form, value.Many);
        Kind = KindOf(value.Form);
        Words = value.Form.Json.Words.IsDefault ? [] : value.Form.Json.Words;
    }

    public string Name { get; }

    /// <summary>What it is for, in one line.</summary>
    public string Description { get; }

    /// <summary>An example value, as YAML writes it.</summary>
    public string Example { get; }

    public bool Required { get; }

    /// <summary>Whether it takes several values.</summary>
    public bool Many { get; }

    public ValueKind Kind { get; }

    /// <summary>The words to choose from; empty for any other kind of value.</summary>
    public ImmutableArray<string> Words { get; }

    /// <summary>What is wrong with a value; null where it fits.</summary>
    public Finding? Fault(string text, Gauge gauge, Place place)
    {
        var findings = new FindingList();
        var context = new ReadingContext(findings, _ => throw new InvalidOperationException("No entry has a picture.")) { Gauge = gauge };
        return _form.Fits(text, place, context) ? null : findings.InOrder()[0];
    }

    static ValueKind KindOf(Form form) =>
        form switch
        {
            Form<Footage> => ReferenceEquals(form, FilmForms.Frames) ? ValueKind.Frames : ValueKind.Length,
            Form<Speed> => ValueKind.Speed,
            Form<Stop> => ValueKind.Stop,
            Form<Distance> => ValueKind.Distance,
            Form<DateOnly> => ValueKind.Date,
            Form<DateTime> => ValueKind.Moment,
            Form<TimeOnly> => ValueKind.Clock,
            Form<string> => ValueKind.Text,
            _ when ReferenceEquals(form, WordForms.YesNo) => ValueKind.YesNo,
            _ when !form.Json.Words.IsDefaultOrEmpty => ValueKind.Choice,
            _ => ValueKind.Other,
        };
}
