using Spoolbook.Papers.Pages;

namespace Spoolbook.Papers.WrapSummaries;

/// <summary>A roll's picture.</summary>
/// <param name="Id">For a link within the page.</param>
/// <param name="Page">The roll's camera report.</param>
public sealed record StripFacts(string Roll, string Id, string Page, string Caption, Markup Picture, Pages.Markup PhonePicture);
