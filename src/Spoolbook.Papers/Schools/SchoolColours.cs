using System.Collections.Immutable;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Schools;

/// <summary>A school's colours as printed and shown.</summary>
internal static class SchoolColours
{
    /// <summary>None, one or two, each dark enough to read; a check flags one that was not.</summary>
    public static ImmutableArray<InkColour> Of(School? school) => [.. (school?.Colours ?? []).Select(c => Readable(c.Value))];

    /// <summary>The colour, or the lightest shade of it that can be read on white paper.</summary>
    public static InkColour Readable(InkColour colour) => colour.Darkened(InkColour.EnoughForText);
}
