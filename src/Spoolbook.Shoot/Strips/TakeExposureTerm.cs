namespace Spoolbook.Shoot.Strips;

/// <summary>One line of the reckoning of a take's exposure.</summary>
/// <param name="Name">What it is: <c>lens at 8, meter asked for 16</c>, <c>shutter half</c>, <c>filter ND6</c>.</param>
/// <param name="Stops">What it gives, in stops; below zero what it takes.</param>
public sealed record TakeExposureTerm(string Name, double Stops);
