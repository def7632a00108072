using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Editing;

/// <summary>Why a change cannot be written.</summary>
public sealed record EditFault(Place Place, string Message, string Help);
