using Spoolbook.Shoot.Records;

namespace Spoolbook.Papers.Wording;

/// <summary>The ready list in words.</summary>
internal static class ReadyWords
{
    /// <summary>Its points, as they should be: <c>gate clean</c>.</summary>
    public static IEnumerable<string> All(Translations words) => Enum.GetValues<ReadyPoint>().Select(point => words["ready-" + Key(point)]);

    /// <summary>Its points, as a sheet writes them and in words.</summary>
    public static IEnumerable<(string Key, string Text)> Points(Translations words) =>
        Enum.GetValues<ReadyPoint>().Select(point => (AsWritten(point), words["ready-" + Key(point)]));

    /// <summary>What a load says of the list; null where it says nothing.</summary>
    public static string? Of(Load load, Translations words) =>
        load switch
        {
            { NotReady: { IsEmpty: false } wrong } => words.Fill(
                "ready-but",
                ("what", string.Join(", ", wrong.Select(point => words["not-ready-" + Key(point.Value)])))
            ),
            { Ready: { } ready } => words[ready.Value ? "ready-all" : "ready-none"],
            _ => null,
        };

    static string AsWritten(ReadyPoint point) =>
        point switch
        {
            ReadyPoint.CutOff => "cut-off",
            ReadyPoint.RunTest => "run-test",
            _ => Key(point),
        };

    static string Key(ReadyPoint point) => point.ToString().ToLowerInvariant();
}
