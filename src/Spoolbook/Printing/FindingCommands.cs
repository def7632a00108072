using System.Globalization;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Printing;

/// <summary>
/// Findings as workflow commands, a line each, by which a code host marks the lines of a change:
/// <c>::error file=…,line=…,col=…,endColumn=…,title=…::message</c>.
/// </summary>
internal static class FindingCommands
{
    public static IEnumerable<string> Lines(CheckedProduction found, SarifPaths paths) =>
        found.Findings.Select(finding => Line(finding, paths.InFolder(finding.Place.File)));

    static string Line(Finding finding, string file)
    {
        var place = finding.Place;
        var end = place.Length > 0 ? string.Create(CultureInfo.InvariantCulture, $",endColumn={place.Column + place.Length}") : "";
        var at = string.Create(CultureInfo.InvariantCulture, $"line={place.Line},col={place.Column}{end}");
        return $"::{Word(finding.Level)} file={Property(file)},{at},title={Property(finding.Check)}::{Data(Message(finding))}";
    }

    static string Word(Level level) => level == Level.Note ? "notice" : level.ToString().ToLowerInvariant();

    static string Message(Finding finding) =>
        Plain.Text(finding.Message)
        + (finding.Help.Length > 0 ? "\n" + string.Join('\n', finding.Help.Split('\n').Select(Plain.Text)) : "");

    // A percent sign and line ends are written as their codes in a message; in a property colons and commas too.
    static string Data(string text) =>
        text.Replace("%", "%25", StringComparison.Ordinal)
            .Replace("\r", "%0D", StringComparison.Ordinal)
            .Replace("\n", "%0A", StringComparison.Ordinal);

    static string Property(string text) =>
        Data(text).Replace(":", "%3A", StringComparison.Ordinal).Replace(",", "%2C", StringComparison.Ordinal);
}
