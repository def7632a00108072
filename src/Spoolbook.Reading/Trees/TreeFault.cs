using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Trees;

/// <summary>A fault that makes the rest of a file unreadable. Only <see cref="TreeReader"/> throws and catches it.</summary>
sealed class TreeFault(string check, Sentence description, Place place, Sentence help) : Exception(description.ToString())
{
    public string Check { get; } = check;

    public Sentence Description { get; } = description;

    public Place Place { get; } = place;

    public Sentence Help { get; } = help;
}
