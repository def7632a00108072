using Spoolbook.Papers.Facts;
using Spoolbook.Shoot.Accounts;
using Spoolbook.Shoot.Strips;

namespace Spoolbook.Papers.Pictures;

/// <summary>What a picture of a roll shows, in words.</summary>
static class PictureWords
{
    public static string Title(RollBook roll, Wording say) => say.Words.Fill(
        "picture-title",
        ("roll", roll.Roll.Name.Value),
        ("loaded", say.LengthWithUnit(roll.Strip.Loaded)),
        ("passes", Wording.Number(roll.Strip.Passes)),
        ("takes", Wording.Number(roll.Strip.Layers.Length)));

    /// <summary>Stretch by stretch from the head, then the effects.</summary>
    public static string Describe(RollBook roll, Wording say)
    {
        var stretches = roll.Strip.Segments.Select(s => say.Words.Fill(
            "picture-stretch",
            ("from", say.Length(s.Span.From)),
            ("to", say.Length(s.Span.To)),
            ("what", What(s, say))));
        return string.Join("; ", stretches.Concat(EffectLines.Of(roll, say))) + ".";
    }

    static string What(Segment segment, Wording say)
    {
        var account = segment.Account switch
        {
            Account.Good => say.Words["good"],
            Account.Hold => say.Words["hold"],
            Account.NoGood => say.Words["no-good"],
            Account.ShortEnd => say.Words["short-end"],
            _ => say.Words["waste"] + ": " + say.Cause(segment.Cause!.Value),
        };
        return segment.Layers.IsEmpty ? account : string.Join(" + ", segment.Layers.Select(l => l.Take.Slate)) + " " + account;
    }
}
