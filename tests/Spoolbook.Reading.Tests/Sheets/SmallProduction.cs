using Spoolbook.Reading.Files;

namespace Spoolbook.Reading.Tests.Sheets;

/// <summary>The smallest production with a bit of everything, to break in one place at a time.</summary>
static class SmallProduction
{
    public const string Head = """
        spoolbook: 1
        title: Short Pier
        code: PIER
        people:
          - {id: ana, name: Ana Quillfeather, role: Assistant}
        days:
          - {day: 1, on: 2026-10-04, where: the pier}
        shots:
          - {scene: 1, shot: A, what: The rope, screen: 6s}
        plan: {running-time: 4min, ratio: 5}
        lab:
          name: Brackwater
          processes: [ecn-2]
          push-most: 2
          return-to: [The Short Pier]
        rates:
          currency: EUR
          process:
            - {process: ecn-2, foot: 0.32, minimum: 25}
          tax: 19%

        """;

    public const string Stock = """
        spoolbook: 1
        lots:
          - {lot: N250-A, stock: Colour negative 250 D, ei: 250, balance: daylight, process: ecn-2, length: 100ft, units: 3}

        """;

    public const string Kit = """
        spoolbook: 1
        bodies:
          - body: B1
            speeds: [12, 16, 24, 32, 48, 64]
            shutter: 133
            finder-loss: 20%
            full-wind: 18ft
            marks:
              - {mark: half, open: 1/2, stops: 1}
        lenses:
          - {lens: 25mm, focal: 25, widest: 1.4, smallest: 22, nearest: 1.5ft}
        filters:
          - {filter: "85", stops: 2/3}

        """;

    public const string Roll = """
        spoolbook: 1
        roll: R01
        lot: N250-A
        unit: 1
        body: B1
        load: {on: 2026-10-04 09:10, by: ana, light: subdued, head: 4+00, loops: set, speed-after: 24}
        log:
          - wind: full
          - take: {scene: 1, shot: A, take: 1, to: 14+10, lens: 25mm, stop: 5.6, focus: 6ft, mark: good, at: 09:30}
          - rewind: {to: 10+00, shutter: closed}
          - take: {scene: 1, shot: A, take: 2, frames: 96fr, filter: ["85"], mark: ng}
        unload: {on: 2026-10-04 16:45, by: ana, tail: 2+00}
        lab: {process: ecn-2, push: 1/2}

        """;

    public static (string Name, string Text)[] Files { get; } =
    [("production.yaml", Head), ("stock.yaml", Stock), ("kit.yaml", Kit), ("rolls/r01.yaml", Roll)];

    /// <summary>The production with one file replaced or added.</summary>
    public static TextFiles With(string name, string text) => TextFiles.Of([.. Files.Where(f => f.Name != name), (name, text)]);

    public static ReadResult Read() => ProductionReader.Read(TextFiles.Of(Files));
}
