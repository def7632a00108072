using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Trees;

/// <summary>What makes the rest of a file unreadable. Thrown and caught within <see cref="TreeReader"/> alone.</summary>
sealed class TreeFault(string check, string message, Place place, string help) : Exception(message)
{
    public string Check { get; } = check;

    public Place Place { get; } = place;

    public string Help { get; } = help;
}
