namespace Spoolbook.Papers.Typesetting.Setting;

/// <summary>How a label's text gives way where the label is too full.</summary>
/// <param name="Scale">How much smaller is set what has the class fit.</param>
/// <param name="Letters">How many letters stay of a text with the class fit; null for all.</param>
sealed record LabelFit(double Scale, int? Letters)
{
    /// <summary>
    /// No letter on a label is smaller, in points: five is what print in the hand can go down to (from memory: the small print
    /// of labels and timetables is five or six).
    /// </summary>
    public const double Least = 5;
}
