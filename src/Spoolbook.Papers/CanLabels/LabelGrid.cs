using Spoolbook.Papers.Typesetting.Setup;
using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.CanLabels;

/// <summary>
/// The layout of labels on a sheet, for the vocabulary's <c>section.sheet</c>. The two label sheets are common ones, by
/// the measures on their boxes (common practice). The plain one has labels that fit across a 100 ft can, eight on
/// either paper.
/// </summary>
public sealed record LabelGrid(string Cols, string Rows, string Width, string Height, string Left, string Top, string GapX)
{
    /// <summary>Labels already used, to be left blank.</summary>
    public string Skip { get; init; } = "0";

    /// <summary>Whether the labels have lines to cut along.</summary>
    public bool Cut { get; init; }

    internal static int PerSheet(LabelSheet sheet) => sheet == LabelSheet.LetterSix ? 6 : 8;

    internal static Paper PaperOf(LabelSheet sheet, PaperSize size) =>
        sheet switch
        {
            LabelSheet.A4Eight => Paper.A4,
            LabelSheet.LetterSix => Paper.Letter,
            _ => size == PaperSize.A4 ? Paper.A4 : Paper.Letter,
        };

    internal static LabelGrid Of(LabelSheet sheet, PaperSize size, int start)
    {
        var grid = sheet switch
        {
            LabelSheet.A4Eight => new LabelGrid("2", "4", "99.1mm", "67.7mm", "4.65mm", "13.1mm", "2.5mm"),
            LabelSheet.LetterSix => new LabelGrid("2", "3", "4in", "3.3333in", "0.1563in", "0.5in", "0.1875in"),
            _ when size == PaperSize.A4 => new LabelGrid("2", "4", "95mm", "72mm", "10mm", "4.5mm", "0") { Cut = true },
            _ => new LabelGrid("2", "4", "95mm", "68.3mm", "12.95mm", "3.1mm", "0") { Cut = true },
        };
        return grid with { Skip = PaperFormat.Number(start - 1) };
    }
}
