namespace Spoolbook.Papers.Typesetting.Layout;

/// <summary>What a column needs: its widest word, its widest line, and the width from a hint.</summary>
/// <param name="Rest">Whether it takes what the others leave.</param>
sealed record ColumnNeed(double Word, double Line, double? Given, bool Narrow, bool Rest = false);
