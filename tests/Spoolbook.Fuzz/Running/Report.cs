using System.Globalization;

namespace Spoolbook.Fuzz.Running;

/// <summary>How far targets came, as lines of a table.</summary>
internal static class Report
{
    public static string Head => $"{"target",-10}{"executions",12}{"a second",10}{"minutes",9}{"edges",8}{"outcomes",10}{"inputs",8}{"finds",7}";

    public static string Line(string target, Places places)
    {
        var done = Progress.Read(places.Progress);
        var speed = done.Seconds > 0 ? done.Executions / done.Seconds : 0;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{target,-10}{done.Executions,12}{speed,10:0.0}{done.Seconds / 60,9:0.0}{done.Edges,8}{done.Outcomes,10}{done.Inputs,8}{Finds(places).Count,7}"
        );
    }

    /// <summary>The first line of each find.</summary>
    public static List<string> Finds(Places places) =>
        [
            .. from folder in Directory.Exists(places.Finds) ? Directory.EnumerateDirectories(places.Finds).Order(StringComparer.Ordinal) : Enumerable.Empty<string>()
            let report = Path.Combine(folder, "report.txt")
            where File.Exists(report)
            select $"{Path.Combine(folder, "input")}: {File.ReadLines(report).First()}",
        ];
}
