using Spoolbook.Papers.Wording;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Pictures;

/// <summary>A picture of a roll, in words.</summary>
static class StripDescription
{
    public static string Title(RollBook roll, PaperFormat format) =>
        format.Words.Fill(
            "picture-title",
            ("roll", roll.Roll.Name.Value),
            ("loaded", format.LengthWithUnit(roll.Strip.Loaded)),
            ("passes", PaperFormat.Number(roll.Strip.Passes)),
            ("takes", PaperFormat.Number(roll.Strip.Layers.Length))
        );

    /// <summary>Stretch by stretch from the head, then the effects.</summary>
    public static string Describe(RollBook roll, PaperFormat format)
    {
        var stretches = roll.Strip.Segments.Select(s =>
            format.Words.Fill(
                "picture-stretch",
                ("from", format.Length(s.Span.From)),
                ("to", format.Length(s.Span.To)),
                ("what", What(s, roll, format))
            )
        );
        return string.Join("; ", stretches.Concat(EffectLines.Of(roll, format))) + ".";
    }

    static string What(Segment segment, RollBook roll, PaperFormat format)
    {
        var account = segment.Account switch
        {
            Account.Good => format.Words["good"],
            Account.Hold => format.Words["hold"],
            Account.NoGood => format.Words["no-good"],
            Account.ShortEnd => format.Words[Legend.WordOfRest(roll)],
            _ => format.Words["waste"] + ": " + format.Cause(segment.Cause!.Value),
        };
        return segment.Layers.IsEmpty ? account : string.Join(" + ", segment.Layers.Select(l => l.Take.Slate)) + " " + account;
    }
}
