using Spoolbook.Reading.Forms;

namespace Spoolbook.Reading.Keys;

/// <summary>A key with values, whatever their type.</summary>
interface IValueKey
{
    Form Form { get; }

    bool Many { get; }

    /// <summary>Reads what a map has under the key, for the findings alone.</summary>
    void Ask(MapReader map);
}
