using System.Collections.Immutable;
using Spoolbook.Checks;
using Spoolbook.Checks.Ruling;
using Spoolbook.Checks.Running;
using Spoolbook.Papers.Ledger;
using Spoolbook.Printing;
using Spoolbook.Reading.Schemas;

namespace Spoolbook;

/// <summary>The JSON Schemas that the command publishes, for the files that it reads and those that it writes for programs.</summary>
internal static class Schemas
{
    const string Findings = "findings";
    const string Status = "status";
    const string Ledger = "ledger";

    /// <summary>The kinds of file with a schema: those that people write, then those that programs read.</summary>
    public static ImmutableArray<string> Kinds { get; } = [.. ProductionSchema.Kinds, Findings, Status, Ledger];

    /// <summary>The schema of a kind, as JSON text.</summary>
    public static string Json(string kind) =>
        kind switch
        {
            Findings => OutputSchema.Findings,
            Status => OutputSchema.Status,
            Ledger => LedgerSchema.Text,
            _ => ProductionSchema.Json(kind, Rules()),
        };

    /// <summary>The files of a production's folder with the schema of each, for the comment in their first line.</summary>
    public static IEnumerable<(string File, string Text)> OfFolder() =>
        from kind in ProductionSchema.Kinds
        where kind is not ("one-file" or ProductionSchema.SchoolKind)
        select (kind + ".schema.json", Json(kind));

    /// <summary>The file of a school's folder with its schema.</summary>
    public static IEnumerable<(string File, string Text)> OfSchool() =>
        [(ProductionSchema.SchoolKind + ".schema.json", Json(ProductionSchema.SchoolKind))];

    // Names that only the checks know, so that an editor completes them too.
    static RuleNames Rules() =>
        new(
            [
                .. from check in CheckList.All
                where !HouseLevels.IsFixed(check.Name)
                select new RuleName(
                    check.Name,
                    $"{Catalogue.Page(check.Name)?.Summary} Usually: {check.Level.ToString().ToLowerInvariant()}."
                ),
                .. from @group in CheckList.Groups
                where !HouseLevels.IsFixed(@group)
                select new RuleName(@group, $"All checks of the group {@group}."),
            ],
            [
                .. from tolerance in Tolerances.All
                select new RuleName(tolerance.Name, $"{tolerance.Description} It is {tolerance.Kind.Name}, usually {tolerance.UsualText}.")
                {
                    Form = new RuleForm(tolerance.Kind.Name.ToString(), tolerance.Kind.Pattern, tolerance.Kind.MostNumber),
                    Example = tolerance.UsualText,
                },
            ]
        );
}
