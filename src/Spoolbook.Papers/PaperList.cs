using System.Collections.Immutable;
using Spoolbook.Papers.CameraReports;
using Spoolbook.Papers.CanLabels;
using Spoolbook.Papers.ExposureCards;
using Spoolbook.Papers.Indexes;
using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.KitLists;
using Spoolbook.Papers.LabOrders;
using Spoolbook.Papers.LearnerSheets;
using Spoolbook.Papers.LogSheets;
using Spoolbook.Papers.PocketLogs;
using Spoolbook.Papers.WrapSummaries;

namespace Spoolbook.Papers;

/// <summary>All papers, in the order of the index. Printing and links follow from this list.</summary>
internal static class PaperList
{
    /// <summary>The workbook's name, without its ending.</summary>
    public const string Workbook = "footage";

    /// <summary>The name of the takes for other programs and for the import, without its ending.</summary>
    public const string Takes = "takes";

    /// <summary>The name of the figures for other programs, without its ending.</summary>
    public const string Ledger = "ledger";

    public static readonly ImmutableArray<IPaper> All =
    [
        new CameraReportPaper(),
        new LabOrderPaper(),
        new CanLabelsPaper(),
        new WrapSummaryPaper(),
        new KitListPaper(),
        new LogSheetsPaper(),
        new PocketLogPaper(),
        new LearnerSheetsPaper(),
        new ExposureCardPaper(),
        new IndexPaper(),
    ];
}
