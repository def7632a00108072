using System.Collections.Immutable;
using Spoolbook.Reading.Files;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading;

/// <param name="Department">As much of it as could be read; null where nothing could.</param>
/// <param name="Findings">What is wrong with the file, by place.</param>
/// <param name="Sources">The lines that were read.</param>
public sealed record DepartmentResult(Department? Department, ImmutableArray<Finding> Findings, SourceTexts Sources);
