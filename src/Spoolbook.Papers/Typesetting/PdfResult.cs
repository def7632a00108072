using System.Collections.Immutable;
using Spoolbook.Papers.Typesetting.Setup;

namespace Spoolbook.Papers.Typesetting;

/// <summary>The finished file, and what could not be drawn as written.</summary>
public sealed record PdfResult(byte[] Bytes, int Pages, ImmutableArray<PageWarning> Warnings);
