namespace Spoolbook.Shoot.Records;

/// <summary>A price by the length of the film.</summary>
/// <param name="Price">The price of one.</param>
/// <param name="By">The unit: a foot, by the gauge's nominal count of frames, or a metre of 1/0.3048 such feet.</param>
public sealed record LengthRate(Located<decimal> Price, LengthUnit By);
