using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading.Keys;

/// <summary>A key with names as a schema sees it, whatever the type of their values.</summary>
interface INamesKey
{
    Sentence Names { get; }

    Form Form { get; }
}
