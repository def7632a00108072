namespace Spoolbook.Papers.Pages;

/// <summary>What an element may contain.</summary>
enum Holds
{
    Nothing,
    Text,
    Blocks,
    TextOrBlocks,
    NamedElements,
    Picture,
}
