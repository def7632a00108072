using Spoolbook.Reading.Forms;

namespace Spoolbook.Reading.Keys;

sealed record ValueKey<T>(string Name, Form<T> Form, string Description) : Key(Name, Description), IValueKey
{
    Form IValueKey.Form => Form;

    bool IValueKey.Many => false;

    void IValueKey.Ask(MapReader map) => map.Value(this);
}
