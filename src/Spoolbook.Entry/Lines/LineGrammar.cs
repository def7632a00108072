using System.Collections.Immutable;
using Spoolbook.Reading.Editing;

namespace Spoolbook.Entry.Lines;

/// <summary>The short form in one table: what can follow each verb. The names of keys come from the tables of the format.</summary>
public static class LineGrammar
{
    const string Clock = "`13:52`, `9:15`";
    const string Moment = "`9:15`, `2026-10-04 9:15`";
    const string Position = "`70`, `70+12`, `1252fr`, `9.5m`, `12s`";
    const string End = "`70`, `70+12`, `1252fr`, `9.5m`";
    const string Person = "a person's id";

    static readonly ImmutableArray<FormRule> _take =
    [
        new("to", LineForm.Position, "right after the slate any position, else " + End),
        new("frames", LineForm.Duration, "`12s`: how long it ran"),
        new("speed", LineForm.Speed, "`16fps`"),
        new("stop", LineForm.Stop, "`f8`, `f/8`, `f8/11`, `T2`"),
        new("lens", LineForm.Name, "a lens of the kit"),
        new("focus", LineForm.Distance, "`9ft`, `5ft6in`, `1.8m`, `80cm`, `inf`"),
        new("filter", LineForm.Name, "a filter of the kit; several add up"),
        new("shutter", LineForm.Shutter, "a mark of the body in use, `1/2`, `75%`"),
        new("mark", LineForm.Mark, "`G`, `H`, `NG`, `T`, `good`, `hold`, `ng`, `test`"),
        new("light", LineForm.Word, "`daylight`, `tungsten`, `mixed`"),
        new("lamps", LineForm.Word, "`50hz`, `60hz`"),
        new("meter", LineForm.Name, "a meter of the kit"),
        new("motor", LineForm.Name, "a motor of the kit"),
        new("single-frame", LineForm.Single, "`ones`, `twos`, `threes`"),
        new("by", LineForm.Name, Person),
        new("at", LineForm.Clock, Clock),
        new("on", LineForm.Date, "`2026-10-04`"),
    ];

    /// <summary>Every verb with an entry of its own.</summary>
    internal static ImmutableArray<VerbGrammar> All { get; } =
    [
        new VerbGrammar(LineVerb.Take, ["take"], EntryTables.Take, _take).Gathered(),
        new VerbGrammar(LineVerb.Amend, ["amend"], EntryTables.Take, _take) { IsPart = true }.Gathered(),
        new VerbGrammar(LineVerb.Wind, ["wind"], EntryTables.Wind, [new("at", LineForm.Clock, Clock)]).Gathered(),
        new VerbGrammar(
            LineVerb.Rewind,
            ["rewind"],
            EntryTables.Rewind,
            [new("to", LineForm.Position, Position), new("shutter", LineForm.Word, "`closed`, `open`"), new("at", LineForm.Clock, Clock)]
        )
        {
            Aliases = [("zeroed", "counter-zeroed")],
        }.Gathered(),
        new VerbGrammar(
            LineVerb.RunOff,
            ["run", "off"],
            EntryTables.RunOff,
            [new("to", LineForm.Position, Position), new("lens", LineForm.Word, "`capped`, `open`"), new("at", LineForm.Clock, Clock)]
        ).Gathered(),
        new VerbGrammar(
            LineVerb.Fog,
            ["fog"],
            EntryTables.Fog,
            [
                new("before", LineForm.Position, "the first length"),
                new("after", LineForm.Position, "the second length"),
                new("at", LineForm.Clock, Clock),
            ]
        ).Gathered(),
        new VerbGrammar(
            LineVerb.Reload,
            ["reload"],
            EntryTables.Reload,
            [
                new("on", LineForm.Moment, Moment),
                new("by", LineForm.Name, Person),
                new("body", LineForm.Name, "a body of the kit"),
                new("light", LineForm.Word, "`dark`, `subdued`, `bright`"),
            ]
        )
        {
            Aliases = [("in", "body")],
        }.Gathered(),
        new VerbGrammar(LineVerb.Note, ["note"], EntryTables.Remark, [new("at", LineForm.Clock, Clock)]).Gathered(),
        new VerbGrammar(
            LineVerb.Load,
            ["load"],
            EntryTables.Load,
            [
                new("lot", LineForm.Unit, "`N250-A/3`: lot and unit"),
                new("body", LineForm.Name, "a body of the kit"),
                new("by", LineForm.Name, Person),
                new("on", LineForm.Moment, Moment),
                new("light", LineForm.Word, "`dark`, `subdued`, `bright`"),
                new("speed-after", LineForm.Speed, "`24fps`"),
            ]
        )
        {
            Aliases = [("in", "body")],
        }.Gathered(),
        new VerbGrammar(
            LineVerb.Unload,
            ["unload"],
            EntryTables.Unload,
            [
                new("on", LineForm.Moment, Moment),
                new("by", LineForm.Name, Person),
                new("light", LineForm.Word, "`dark`, `subdued`, `bright`"),
                new("short-end", LineForm.Word, "`kept`, `thrown`"),
                new("left", LineForm.Left, "`38 left`"),
            ]
        )
        {
            Aliases = EntryTables.Unload.AlsoCalled,
            Openers = ["totals", "boxes"],
        }.Gathered(),
    ];

    /// <summary>The verbs that can begin a line.</summary>
    public static ImmutableArray<string> Verbs { get; } = [.. All.Select(v => v.Word), "run-off", "strike", "day"];

    /// <summary>How a line changes the last entry of a log, which is of a verb.</summary>
    internal static VerbGrammar AmendmentOf(LineVerb verb) =>
        verb == LineVerb.Take ? Of(LineVerb.Amend)! : Of(verb)! with { IsPart = true };

    /// <summary>The verb of an entry of the log, by its word in the file; null for a word that begins no entry.</summary>
    internal static LineVerb? OfEntry(string word) => All.FirstOrDefault(g => g.Table.Word == word)?.Verb;

    /// <summary>The grammar of a verb; null where the verb has no entry of its own.</summary>
    internal static VerbGrammar? Of(LineVerb verb)
    {
        foreach (var grammar in All)
        {
            if (grammar.Verb == verb)
            {
                return grammar;
            }
        }

        return null;
    }
}
