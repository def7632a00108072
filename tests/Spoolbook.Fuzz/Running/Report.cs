using System.Globalization;

namespace Spoolbook.Fuzz.Running;

/// <summary>How far targets came, as lines of a table.</summary>
internal static class Report
{
    const int First = 10,
        Other = 12;

    public static string Head => Row("target", "executions", "a second", "minutes", "edges", "outcomes", "inputs", "finds");

    public static string Line(string target, Places places)
    {
        var done = Progress.Read(places.Progress);
        var speed = done.Seconds > 0 ? done.Executions / done.Seconds : 0;
        return Row(
            target,
            Figure(done.Executions),
            Figure(speed, "0.0"),
            Figure(done.Seconds / 60, "0.0"),
            Figure(done.Edges),
            Figure(done.Outcomes),
            Figure(done.Inputs),
            Figure(Finds(places).Count)
        );
    }

    static string Row(string first, params string[] others) => first.PadRight(First) + string.Concat(others.Select(o => o.PadLeft(Other)));

    static string Figure(double value, string form = "0") => value.ToString(form, CultureInfo.InvariantCulture);

    /// <summary>The first line of each find.</summary>
    public static List<string> Finds(Places places) =>
        [
            .. from folder in Directory.Exists(places.Finds)
                ? Directory.EnumerateDirectories(places.Finds).Order(StringComparer.Ordinal)
                : Enumerable.Empty<string>()
            let report = Path.Combine(folder, "report.txt")
            where File.Exists(report)
            select $"{Path.Combine(folder, "input")}: {File.ReadLines(report).First()}",
        ];
}
