using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Tests.Sheets;

/// <summary>Every value of a production as a line of text, with or without its place.</summary>
static class RecordText
{
    /// <summary>One line per value, <c>rolls[0].load.on = …</c>, without its place.</summary>
    public static string Values(Production production) => string.Join('\n', Walk(production, "").Select(v => $"{v.Path} = {v.Value}"));

    /// <summary>One line per located value, in order of place: <c>rolls/r01.yaml rolls[0].load.on (6,12)-(6,28)</c>.</summary>
    public static string Places(Production production)
    {
        var lines =
            from v in Walk(production, "")
            where v.Place is not null
            let p = v.Place!.Value
            orderby p.File, p.Line, p.Column, v.Path
            select string.Create(CultureInfo.InvariantCulture, $"{p.File} {v.Path} ({p.Line},{p.Column})-({p.Line},{p.Column + p.Length})");
        return string.Join('\n', lines);
    }

    static IEnumerable<(string Path, string Value, Place? Place)> Walk(object? at, string path)
    {
        switch (at)
        {
            case null or Place:
                return [];
            case IEnumerable list and not string:
                return list.Cast<object?>().SelectMany((item, i) => Walk(item, $"{path}[{i}]"));
        }

        var type = at.GetType();
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Located<>))
        {
            var place = (Place)type.GetProperty("Place")!.GetValue(at)!;
            return [(path, Text(type.GetProperty("Value")!.GetValue(at)!), place)];
        }

        if (type.Namespace != typeof(Production).Namespace || type.IsEnum)
        {
            return [(path, Text(at), null)];
        }

        return from property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
               where property.GetIndexParameters().Length == 0 && IsStored(property)
               orderby property.Name
               from value in Walk(property.GetValue(at), path.Length == 0 ? Dashed(property.Name) : $"{path}.{Dashed(property.Name)}")
               select value;
    }

    // Computed properties would only repeat the others.
    static bool IsStored(PropertyInfo property) => property.SetMethod is not null;

    static string Text(object value) =>
        value switch
        {
            IFormattable formattable => formattable.ToString(null, CultureInfo.InvariantCulture),
            _ => value.ToString() ?? "",
        };

    static string Dashed(string name)
    {
        var text = new StringBuilder();
        foreach (var c in name)
        {
            text.Append(char.IsUpper(c) && text.Length > 0 ? "-" : "").Append(char.ToLowerInvariant(c));
        }

        return text.ToString();
    }
}
