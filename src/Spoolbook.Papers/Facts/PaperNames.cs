using System.Globalization;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Facts;

/// <summary>What papers are called in their folder, without their ending.</summary>
internal static class PaperNames
{
    public const string Index = "index";
    public const string CanLabels = "can-labels";
    public const string WrapSummary = "wrap-summary";
    public const string KitList = "kit-list";
    public const string LogSheets = "log-sheets";
    public const string Workbook = "footage";
    public const string Ledger = "ledger";

    public static string CameraReport(Roll roll) => "camera-report-" + FileSafe(roll.Name.Value);

    /// <summary>Where a roll's strip stands on a page.</summary>
    public static string StripOf(Roll roll) => "strip-" + FileSafe(roll.Name.Value);

    public static string LabOrder(int? consignment) => consignment is { } number ? string.Create(CultureInfo.InvariantCulture, $"lab-order-{number}") : "lab-order";

    public static string ExposureCard(Body body) => "exposure-card-" + FileSafe(body.Name.Value);

    // A roll may be called anything; a file may not.
    static string FileSafe(string name)
    {
        var safe = string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '-')).Trim('-');
        if (safe == name)
        {
            return name;
        }

        // Two names that come out alike must not share a file.
        var hash = name.Aggregate(17u, (sum, c) => unchecked((sum * 31) + c));
        return string.Create(CultureInfo.InvariantCulture, $"{safe}-{hash:x8}");
    }
}
