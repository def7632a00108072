namespace Spoolbook.Shoot.Shipments;

/// <summary>What the lab, or whoever looked, found on the film.</summary>
/// <param name="At">Where on the film, as it was written: <c>31+12</c>; empty where it is about all of it.</param>
/// <param name="Note">What.</param>
public sealed record FaultOnFilm(string At, string Note);
