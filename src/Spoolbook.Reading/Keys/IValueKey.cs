using Spoolbook.Reading.Forms;

namespace Spoolbook.Reading.Keys;

/// <summary>What can be asked of a key with values, whatever their type.</summary>
interface IValueKey
{
    Form Form { get; }

    bool Many { get; }

    /// <summary>Looks at what a map has under the key, for the findings alone.</summary>
    void Ask(MapReader map);
}
