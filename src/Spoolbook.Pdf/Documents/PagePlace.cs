namespace Spoolbook.Pdf.Documents;

/// <summary>A place on a page that has a name, or a line in the outline.</summary>
/// <param name="Level">The depth in the outline, from 1.</param>
/// <param name="Top">Height above the page's lower edge, in points.</param>
sealed record PagePlace(string Text, int Level, int Page, double Top);
