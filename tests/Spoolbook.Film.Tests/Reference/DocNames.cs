using System.Text.RegularExpressions;

namespace Spoolbook.Film.Tests.Reference;

/// <summary>Turns the compiler's names, <c>M:Spoolbook.Film.Stop.OfNumber(System.Double)</c>, into a reader's.</summary>
static partial class DocNames
{
    static readonly Dictionary<string, string> _keywords = new(StringComparer.Ordinal)
    {
        ["Double"] = "double",
        ["Int32"] = "int",
        ["Int64"] = "long",
        ["Decimal"] = "decimal",
        ["String"] = "string",
        ["Boolean"] = "bool",
    };

    /// <summary>The type that a member belongs to, with its namespace; the name itself for a type.</summary>
    public static string Owner(string name)
    {
        var path = Path(name);
        return name.StartsWith("T:", StringComparison.Ordinal) ? path : path[..path.LastIndexOf('.')];
    }

    /// <summary>The last part, with the parameters of a method: <c>OfNumber(double)</c>.</summary>
    public static string Short(string name)
    {
        var path = Path(name);
        var last = path[(path.LastIndexOf('.') + 1)..].Replace("`2", "<TValue, TFault>", StringComparison.Ordinal);
        last = last == "#ctor" ? "new" : last;
        return name.StartsWith("M:", StringComparison.Ordinal) ? last + Parameters(name) : last;
    }

    static string Path(string name)
    {
        var end = name.IndexOf('(', StringComparison.Ordinal);
        return end < 0 ? name[2..] : name[2..end];
    }

    static string Parameters(string name)
    {
        var start = name.IndexOf('(', StringComparison.Ordinal);
        if (start < 0)
        {
            return "()";
        }

        var types = TypeName()
            .Replace(name[start..], match => _keywords.GetValueOrDefault(match.Groups["last"].Value, match.Groups["last"].Value));
        types = Nullable().Replace(types, "${inner}?");
        return types
            .Replace('{', '<')
            .Replace('}', '>')
            .Replace(",", ", ", StringComparison.Ordinal)
            .Replace("`0@", "out TValue", StringComparison.Ordinal);
    }

    [GeneratedRegex(@"([A-Za-z0-9]+\.)*(?<last>[A-Za-z0-9]+)", RegexOptions.ExplicitCapture)]
    private static partial Regex TypeName();

    [GeneratedRegex(@"Nullable\{(?<inner>[A-Za-z0-9]+)\}")]
    private static partial Regex Nullable();
}
