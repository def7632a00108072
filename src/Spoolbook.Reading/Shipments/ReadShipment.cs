using System.Collections.Immutable;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Shipments;

namespace Spoolbook.Reading.Shipments;

/// <summary>What a consignment's record says.</summary>
/// <param name="Record">The record; null where it could not be read.</param>
/// <param name="Findings">What is wrong with it.</param>
/// <param name="Sources">Its lines.</param>
public sealed record ReadShipment(ShipmentRecord? Record, ImmutableArray<Finding> Findings, SourceTexts Sources);
