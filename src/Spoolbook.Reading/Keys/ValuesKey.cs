using Spoolbook.Reading.Forms;

namespace Spoolbook.Reading.Keys;

/// <summary>A key with a list of values; a single one needs no list.</summary>
sealed record ValuesKey<T>(string Name, Form<T> Form, string Description) : Key(Name, Description), IValueKey
{
    Form IValueKey.Form => Form;

    bool IValueKey.Many => true;

    void IValueKey.Ask(MapReader map) => map.Values(this);
}
