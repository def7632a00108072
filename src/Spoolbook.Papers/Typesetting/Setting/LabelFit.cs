namespace Spoolbook.Papers.Typesetting.Setting;

/// <summary>How a label's text gives way where the label is too full.</summary>
/// <param name="Scale">The scale of texts of class fit.</param>
/// <param name="Letters">How many letters of such a text are kept; null for all.</param>
/// <param name="HeadingScale">The scale of headings, which are large enough to give way before what is read closely.</param>
sealed record LabelFit(double Scale, int? Letters, double HeadingScale = 1)
{
    /// <summary>Type that is read in the hand without a thought, in points (from memory: eight is that of a newspaper).</summary>
    public const double Easy = 8;

    /// <summary>
    /// The smallest type on a label, in points: five is the limit for print held in the hand (from memory: the small
    /// print of labels and timetables is five or six).
    /// </summary>
    public const double Least = 5;
}
