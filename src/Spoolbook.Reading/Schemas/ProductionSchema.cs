using System.Collections.Immutable;
using Spoolbook.Reading.Keys;

namespace Spoolbook.Reading.Schemas;

/// <summary>JSON Schemas of the files, for editors that complete keys and explain them.</summary>
public static class ProductionSchema
{
    /// <summary>The kind of a school's own file, which is in no production.</summary>
    public const string SchoolKind = "school";

    static readonly ImmutableArray<(string Kind, string Title, KeyTable Table)> _kinds =
    [
        ("production", "production.yaml", FileKeys.Production),
        ("stock", "stock.yaml", FileKeys.Stock),
        ("kit", "kit.yaml", FileKeys.Kit),
        ("roll", "a roll", FileKeys.Roll),
        ("one-file", "a production in one file", FileKeys.Whole),
        (SchoolKind, "school.yaml", DepartmentKeys.Table),
    ];

    /// <summary>The kinds of file with a schema.</summary>
    public static ImmutableArray<string> Kinds { get; } = [.. _kinds.Select(k => k.Kind)];

    /// <summary>The schema of a kind, as JSON text (JSON Schema 2020-12).</summary>
    /// <param name="rules">The names allowed under <c>rules:</c>; without them any name is.</param>
    /// <exception cref="ArgumentException">There is no such kind.</exception>
    public static string Json(string kind, RuleNames? rules = null)
    {
        foreach (var (name, title, table) in _kinds)
        {
            if (name == kind)
            {
                return SchemaWriter.Write($"urn:spoolbook:schema:{kind}:1", title, table, rules);
            }
        }

        throw new ArgumentException($"There is no schema of the kind {kind}.", nameof(kind));
    }
}
