namespace Spoolbook.Shoot.Records;

/// <summary>The sheet for can labels, by paper and labels on a sheet: <c>cut</c>, <c>a4-8</c> or <c>letter-6</c>.</summary>
public enum LabelSheet
{
    /// <summary>Plain paper of the production's size, eight labels with lines to cut along.</summary>
    Cut,

    /// <summary>An A4 sheet of eight labels, 99.1 × 67.7 mm, two in a row.</summary>
    A4Eight,

    /// <summary>A letter sheet of six labels, 4 × 3⅓ inches, two in a row.</summary>
    LetterSix,
}
