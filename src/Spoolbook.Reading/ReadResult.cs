using System.Collections.Immutable;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading;

/// <summary>What came of reading a production.</summary>
/// <param name="Production">As much of it as could be read; null only where there is nothing to go on.</param>
/// <param name="Findings">What is wrong with the sheets, by file and place.</param>
/// <param name="Sources">The lines that were read.</param>
public sealed record ReadResult(Production? Production, ImmutableArray<Finding> Findings, SourceTexts Sources);
