using Spoolbook.Reading.Forms;

namespace Spoolbook.Reading.Keys;

/// <summary>What a schema asks of a key with names, whatever the type of their values.</summary>
interface INamesKey
{
    string Names { get; }

    Form Form { get; }
}
