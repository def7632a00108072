using System.Collections.Immutable;
using System.Text;

namespace Spoolbook.Beginning;

/// <summary>A file of a new production.</summary>
/// <param name="Name">The path from its folder, with forward slashes.</param>
internal sealed record BegunFile(string Name, ImmutableArray<byte> Bytes)
{
    public BegunFile(string name, string text)
        : this(name, [.. Encoding.UTF8.GetBytes(text)]) { }
}
