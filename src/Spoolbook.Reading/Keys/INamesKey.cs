using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

/// <summary>What a schema asks of a key with names, whatever the type of their values.</summary>
interface INamesKey
{
    Sentence Names { get; }

    Form Form { get; }
}
