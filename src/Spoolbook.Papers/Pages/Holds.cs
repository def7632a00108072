namespace Spoolbook.Papers.Pages;

/// <summary>What may stand inside an element.</summary>
enum Holds
{
    Nothing,
    Text,
    Blocks,
    TextOrBlocks,
    NamedElements,
    Picture,
}
