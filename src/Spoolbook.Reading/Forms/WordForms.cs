using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Forms;

/// <summary>Text, and words out of a list.</summary>
static class WordForms
{
    public static readonly Form<string> Text = new(
        SheetChecks.WrongKind,
        Sentence.Of("sheet/wrong-kind.value.text"),
        Sentence.Of("sheet/wrong-kind.help.text"),
        FormJson.AnyText,
        Any
    );

    /// <summary>Any text parses: a wrong version has a check of its own.</summary>
    public static readonly Form<string> Version = new(
        SheetChecks.UnsupportedVersion,
        Sentence.Of("sheet/unsupported-version.value.version"),
        Sentence.Of("sheet/unsupported-version.help.version"),
        FormJson.Whole(1, 1, "^1$"),
        Any
    );

    public static readonly Form<string> Code = new(
        SheetChecks.BadCode,
        Sentence.Of("sheet/bad-code.value.code"),
        Sentence.Of("sheet/bad-code.help.code"),
        FormJson.Number("^[A-Za-z0-9-]+$"),
        ACode
    );

    public static readonly Form<string> Language = new(
        SheetChecks.BadChoice,
        Sentence.Of("sheet/bad-choice.value.language"),
        Sentence.Of("sheet/bad-choice.help.language"),
        FormJson.Text("^[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*$"),
        ALanguage
    );

    public static readonly Form<bool> YesNo = Choice(("yes", true), ("no", false), ("true", true), ("false", false));

    public static readonly Form<PaperSize> Paper = Choice(("letter", PaperSize.Letter), ("a4", PaperSize.A4));

    public static readonly Form<LabelSheet> Labels = Choice(
        ("cut", LabelSheet.Cut),
        ("a4-8", LabelSheet.A4Eight),
        ("letter-6", LabelSheet.LetterSix)
    );

    public static readonly Form<LengthUnit> Unit = Choice(("feet", LengthUnit.Feet), ("metres", LengthUnit.Metres));

    public static readonly Form<FinderPractice> MeterFor = Choice(("adapted", FinderPractice.Adapted), ("marked", FinderPractice.Marked));

    public static readonly Form<ColourBalance> Balance = Choice(
        ("daylight", ColourBalance.Daylight),
        ("tungsten", ColourBalance.Tungsten),
        ("none", ColourBalance.None)
    );

    public static readonly Form<LoadingLight> Light = Choice(
        ("dark", LoadingLight.Dark),
        ("subdued", LoadingLight.Subdued),
        ("bright", LoadingLight.Bright)
    );

    public static readonly Form<SubjectLight> SubjectLight = Choice(
        ("daylight", Shoot.Records.SubjectLight.Daylight),
        ("tungsten", Shoot.Records.SubjectLight.Tungsten),
        ("mixed", Shoot.Records.SubjectLight.Mixed)
    );

    public static readonly Form<int> Lamps = Choice(("50hz", 50), ("60hz", 60));

    public static readonly Form<DeclaredEffect> Effect = Choice(
        ("fade", DeclaredEffect.Fade),
        ("dissolve", DeclaredEffect.Dissolve),
        ("double-exposure", DeclaredEffect.DoubleExposure),
        ("hand-cranked", DeclaredEffect.HandCranked)
    );

    public static readonly Form<DeliveredTakes> DeliveredTakes = Choice(
        ("whole-roll", Shoot.Records.DeliveredTakes.WholeRoll),
        ("good", Shoot.Records.DeliveredTakes.Good),
        ("good-and-hold", Shoot.Records.DeliveredTakes.GoodAndHold)
    );

    public static readonly Form<DeliveredSound> DeliveredSound = Choice(
        ("none", Shoot.Records.DeliveredSound.None),
        ("apart", Shoot.Records.DeliveredSound.Apart),
        ("synced", Shoot.Records.DeliveredSound.Synced)
    );

    public static readonly Form<SpringLeft> Spring = Choice(("run-down", SpringLeft.RunDown), ("wound", SpringLeft.Wound));

    public static readonly Form<ColdStore> Cold = Choice(("fridge", ColdStore.Fridge), ("freezer", ColdStore.Freezer));

    public static readonly Form<bool> Slot = Choice(("filled", true), ("empty", false));

    public static readonly Form<int> Perforation = Choice(("1R", 1), ("2R", 2));

    public static readonly Form<int> Sprockets = Choice(("one-side", 1), ("both-sides", 2));

    public static readonly Form<FilmWinding> Winding = Choice(("A", FilmWinding.A), ("B", FilmWinding.B));

    public static readonly Form<LensMadeFor> MadeFor = Choice(("prism", LensMadeFor.Prism), ("air", LensMadeFor.Air));

    public static readonly Form<bool> Ready = Choice(("all", true), ("none", false));

    public static readonly Form<MinimumPer> MinimumPer = Choice(
        ("roll", Shoot.Records.MinimumPer.Roll),
        ("production", Shoot.Records.MinimumPer.Production),
        ("order", Shoot.Records.MinimumPer.Order)
    );

    public static readonly Form<ReadyPoint> ReadyPoint = Choice(
        ("gate", Shoot.Records.ReadyPoint.Gate),
        ("loops", Shoot.Records.ReadyPoint.Loops),
        ("plate", Shoot.Records.ReadyPoint.Plate),
        ("slot", Shoot.Records.ReadyPoint.Slot),
        ("cut-off", Shoot.Records.ReadyPoint.CutOff),
        ("run-test", Shoot.Records.ReadyPoint.RunTest)
    );

    public static readonly Form<KitCondition> Condition = Choice(
        ("good", KitCondition.Good),
        ("worn", KitCondition.Worn),
        ("broken", KitCondition.Broken)
    );

    public static readonly Form<DayOfWeek> Weekday = Choice(
        ("monday", DayOfWeek.Monday),
        ("tuesday", DayOfWeek.Tuesday),
        ("wednesday", DayOfWeek.Wednesday),
        ("thursday", DayOfWeek.Thursday),
        ("friday", DayOfWeek.Friday),
        ("saturday", DayOfWeek.Saturday),
        ("sunday", DayOfWeek.Sunday)
    );

    public static readonly Form<SlatePlace> Slate = Choice(("head", SlatePlace.Head), ("tail", SlatePlace.Tail), ("none", SlatePlace.None));

    public static readonly Form<bool> Finder = Choice(("closed", true), ("open", false));

    /// <summary>The marks of a take, as a file writes them.</summary>
    public static readonly IReadOnlyList<(string Word, Mark Value)> MarkWords =
    [
        ("good", Shoot.Records.Mark.Good),
        ("hold", Shoot.Records.Mark.Hold),
        ("ng", Shoot.Records.Mark.NoGood),
        ("test", Shoot.Records.Mark.Test),
    ];

    /// <summary>The letters that camera reports use for them. No good has none: <c>ng</c> is short already.</summary>
    public static readonly IReadOnlyList<(string Word, Mark Value)> MarkLetters =
    [
        ("g", Shoot.Records.Mark.Good),
        ("h", Shoot.Records.Mark.Hold),
    ];

    public static readonly Form<Mark> Mark = Choice([.. MarkWords], [.. MarkLetters]);

    public static readonly Form<Remainder> ShortEnd = Choice(("kept", Remainder.Kept), ("thrown", Remainder.Thrown));

    public static readonly Form<bool> Loops = Choice(("set", true), ("not-set", false));

    public static readonly Form<bool> Plate = Choice(("closed", true), ("open", false));

    public static readonly Form<bool> ShutterClosed = Choice(("closed", true), ("open", false));

    public static readonly Form<bool> InDark = Choice(("dark", true), ("camera", false));

    public static readonly Form<bool> Capped = Choice(("capped", true), ("open", false));

    public static readonly Form<Level?> Level = Choice<Level?>(
        ("error", Shoot.Records.Level.Error),
        ("warning", Shoot.Records.Level.Warning),
        ("note", Shoot.Records.Level.Note),
        ("off", null)
    );

    /// <remarks>Plain arrays: a query would be compiled anew, at each start, for every kind of word.</remarks>
    public static Form<T> Choice<T>(params (string Word, T Value)[] words) => Choice(words, []);

    /// <param name="readToo">Words that are read and never offered.</param>
    static Form<T> Choice<T>((string Word, T Value)[] words, (string Word, T Value)[] readToo)
    {
        (string Word, T Value)[] all = [.. words, .. readToo];
        var names = Array.ConvertAll(all, word => word.Word);
        var offered = names[..words.Length];
        return new Form<T>(
            SheetChecks.BadChoice,
            Sentence.Of("sheet/bad-choice.value.words"),
            Sentence.Of("sheet/bad-choice.help.words", ("words", Either(offered))),
            FormJson.Choice(offered, names[words.Length..]),
            Parse
        );

        bool Parse(string text, ReadingContext context, out T value)
        {
            var which = Array.FindIndex(names, name => name.Equals(text, StringComparison.OrdinalIgnoreCase));
            value = all[Math.Max(which, 0)].Value;
            return which >= 0;
        }
    }

    static Sentence Either(string[] names) =>
        Sentence.Of("list.or", ("before", string.Join(", ", names.SkipLast(1).Select(n => $"`{n}`"))), ("last", $"`{names[^1]}`"));

    static bool Any(string text, ReadingContext context, out string value)
    {
        value = text;
        return true;
    }

    static bool ACode(string text, ReadingContext context, out string value)
    {
        value = text;
        return text.Length > 0 && text.All(c => char.IsAsciiLetterOrDigit(c) || c == '-');
    }

    static bool ALanguage(string text, ReadingContext context, out string value)
    {
        value = text;
        var parts = text.Split('-');
        return parts[0].Length is 2 or 3
            && parts[0].All(char.IsAsciiLetter)
            && parts.Skip(1).All(p => p.Length is >= 2 and <= 8 && p.All(char.IsAsciiLetterOrDigit));
    }
}
