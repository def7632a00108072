namespace Spoolbook.Shoot.Strips;

/// <summary>One term of a take's exposure.</summary>
/// <param name="Name">What it is: <c>lens at 8, meter asked for 16</c>, <c>shutter half</c>, <c>filter ND6</c>.</param>
/// <param name="Stops">The light that it gives, in stops; below zero, takes.</param>
public sealed record TakeExposureTerm(string Name, double Stops);
