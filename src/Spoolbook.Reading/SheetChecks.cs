using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Reading;

/// <summary>The names of what reading has to say. Each has its page among the checks.</summary>
public static class SheetChecks
{
    public const string MissingFile = "sheet/missing-file";
    public const string UnreadableFile = "sheet/unreadable-file";
    public const string TooLarge = "sheet/too-large";
    public const string TooDeep = "sheet/too-deep";
    public const string NotYaml = "sheet/not-yaml";
    public const string UnsupportedVersion = "sheet/unsupported-version";
    public const string UnknownKey = "sheet/unknown-key";
    public const string MissingKey = "sheet/missing-key";
    public const string DuplicateKey = "sheet/duplicate-key";
    public const string WrittenTwice = "sheet/written-twice";
    public const string WrongKind = "sheet/wrong-kind";
    public const string DuplicateName = "sheet/duplicate-name";
    public const string UnknownReference = "sheet/unknown-reference";
    public const string BadCode = "sheet/bad-code";
    public const string BadLength = "sheet/bad-length";
    public const string BadSpeed = "sheet/bad-speed";
    public const string BadStop = "sheet/bad-stop";
    public const string BadDistance = "sheet/bad-distance";
    public const string BadDate = "sheet/bad-date";
    public const string BadTime = "sheet/bad-time";
    public const string BadDuration = "sheet/bad-duration";
    public const string BadNumber = "sheet/bad-number";
    public const string BadFraction = "sheet/bad-fraction";
    public const string BadChoice = "sheet/bad-choice";

    /// <summary>Every check of reading with its level and a line about it.</summary>
    public static ImmutableArray<(string Name, Level Level, string Summary)> All { get; } =
    [
        (MissingFile, Level.Error, "A file of the production folder is not there."),
        (UnreadableFile, Level.Error, "A file cannot be opened, or is not text in UTF-8."),
        (TooLarge, Level.Error, "A file is larger than anybody writes by hand."),
        (TooDeep, Level.Error, "Lists and maps lie in one another too deep."),
        (NotYaml, Level.Error, "The file is not YAML: a bracket, a quote or the indentation is wrong."),
        (UnsupportedVersion, Level.Error, "The file asks for a version of the format that this Spoolbook does not know."),
        (UnknownKey, Level.Error, "A key is not one that this place has; often a misspelling."),
        (MissingKey, Level.Error, "Something that must be written is not."),
        (DuplicateKey, Level.Error, "One key stands twice in the same map."),
        (WrittenTwice, Level.Error, "Two keys that exclude each other are both written."),
        (WrongKind, Level.Error, "A list, a map or a single value stands where another of them belongs."),
        (DuplicateName, Level.Error, "Two rolls, lots, people or pieces of the kit have one name."),
        (UnknownReference, Level.Error, "A person or a roll is named that is not listed."),
        (BadCode, Level.Error, "The production's code holds something else than letters, digits and hyphens."),
        (BadLength, Level.Error, "A length or position of film cannot be read."),
        (BadSpeed, Level.Error, "A camera speed cannot be read."),
        (BadStop, Level.Error, "A stop, or an amount of stops, cannot be read."),
        (BadDistance, Level.Error, "A distance cannot be read."),
        (BadDate, Level.Error, "A date cannot be read, or the calendar does not have it."),
        (BadTime, Level.Error, "A time of day cannot be read."),
        (BadDuration, Level.Error, "A length of time cannot be read."),
        (BadNumber, Level.Error, "A number cannot be read, or is out of its range."),
        (BadFraction, Level.Error, "A part of a whole cannot be read, or is not between none and all of it."),
        (BadChoice, Level.Error, "A word is not one of those that can stand here."),
    ];
}
