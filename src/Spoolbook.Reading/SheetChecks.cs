using System.Collections.Immutable;

namespace Spoolbook.Reading;

/// <summary>The names of reading's own checks. Each has its page among the checks.</summary>
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
    public const string BadCharacter = "sheet/bad-character";
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
    public const string BadColour = "sheet/bad-colour";
    public const string BadPicture = "sheet/bad-picture";
    public const string NotRead = "sheet/not-read";
    public const string TextCut = "sheet/text-cut";
    public const string NamesAlike = "sheet/names-alike";
    public const string RollGone = "roll/gone";
    public const string NumberSkipped = "roll/number-skipped";

    public static ImmutableArray<string> All { get; } =
    [
        MissingFile,
        UnreadableFile,
        TooLarge,
        TooDeep,
        NotYaml,
        UnsupportedVersion,
        UnknownKey,
        MissingKey,
        DuplicateKey,
        WrittenTwice,
        WrongKind,
        DuplicateName,
        UnknownReference,
        BadCode,
        BadCharacter,
        BadLength,
        BadSpeed,
        BadStop,
        BadDistance,
        BadDate,
        BadTime,
        BadDuration,
        BadNumber,
        BadFraction,
        BadChoice,
        BadColour,
        BadPicture,
        NotRead,
        TextCut,
        NamesAlike,
        RollGone,
        NumberSkipped,
    ];
}
