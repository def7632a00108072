namespace Spoolbook.Papers.Typesetting.Setting;

/// <summary>How a label's text gives way where the label is too full.</summary>
/// <param name="Scale">The scale of texts of class fit.</param>
/// <param name="Letters">How many letters of such a text are kept; null for all.</param>
sealed record LabelFit(double Scale, int? Letters)
{
    /// <summary>
    /// The smallest type on a label, in points: five is the limit for print held in the hand (from memory: the small
    /// print of labels and timetables is five or six).
    /// </summary>
    public const double Least = 5;
}
