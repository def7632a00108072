using Spoolbook.Entry.Lines;
using Spoolbook.Reading;
using Spoolbook.Reading.Files;

namespace Spoolbook.Entry.Tests.Lines;

/// <summary>A small production with a roll in the camera, and what lines about it say.</summary>
static class Said
{
    public const string Kit = """
        spoolbook: 1
        title: The Short Pier
        code: PIER
        people: [{id: ines, name: Ines, role: Assistant}, {id: dov, name: Dov, role: Loader}]
        lots: [{lot: N250-A, stock: Colour negative 250 D, ei: 250, process: ecn-2, length: 100ft, units: 4}]
        bodies:
          - {body: B1, shutter: 133, marks: [{mark: open, open: 1}, {mark: half, open: 1/2}, {mark: closed, open: 0}]}
          - {body: B2, shutter: 170}
        lenses: [{lens: 10mm, focal: 10}, {lens: 25mm, focal: 25}, {lens: "75", focal: 75}]
        filters: [{filter: "85", stops: 2/3}, {filter: ND6, stops: 2}, {filter: PL, stops: 1}]
        meters: [{meter: M1}]
        motors: [{motor: E1, speeds: [24]}]

        """;

    public const string OneRoll = """
        rolls:
          - roll: R03
            lot: N250-A
            unit: 1
            body: B1
            load: {on: 2026-10-03 09:15, by: ines, head: 4+00}
            log:
              - take: {scene: 1, shot: A, take: 3, to: 14+10, speed: 24, lens: 10mm, stop: 8/11, filter: [ND6, PL], focus: 5ft 6in, mark: good}
        """;

    public static DateOnly Today { get; } = new(2026, 10, 4);

    public static LineContext Context { get; } = Of(Kit + OneRoll);

    /// <summary>No roll was loaded yet.</summary>
    public static LineContext Empty { get; } = Of(Kit);

    public static LineContext Of(string yaml) => LineContext.Of(ProductionReader.Read(TextFiles.OneFile(yaml)).Production!, Today);

    public static LineRead Line(string text, LineContext? context = null) => LineReader.Read(text, "day.txt", 7, context ?? Context);

    /// <summary>The keys that a line writes, as YAML between brackets; or the finding that refuses it.</summary>
    public static string Keys(string text, LineContext? context = null) =>
        Line(text, context) switch
        {
            { Refused: { } finding } => $"{finding.Check} {finding.Place.Column}: {finding.Message} {finding.Help}",
            { Said: { } said } => string.Join(
                ", ",
                [
                    .. said.Keys.Select(k => $"{k.Key}: {(k.Values.Length == 1 ? k.Values[0] : $"[{string.Join(", ", k.Values)}]")}"),
                    .. said.NotNoted.Select(k => $"{k} -"),
                ]
            ),
            _ => "",
        };
}
