namespace Spoolbook.Beginning;

/// <summary>An answer with several things in it: a name before a colon, and parts between commas.</summary>
internal static class NamedParts
{
    /// <summary>The name, null where there is none, and the parts that are not empty.</summary>
    public static (string? Name, string[] Parts) Of(string text)
    {
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        var comma = text.IndexOf(',', StringComparison.Ordinal);
        var named = colon > 0 && (comma < 0 || colon < comma);
        var parts = (named ? text[(colon + 1)..] : text).Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return (named ? text[..colon].Trim() : null, parts);
    }
}
