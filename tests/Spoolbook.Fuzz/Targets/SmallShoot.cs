using System.Text;
using Spoolbook.Reading.Files;

namespace Spoolbook.Fuzz.Targets;

/// <summary>An invented production of one roll, small enough to be printed many times a second.</summary>
internal static class SmallShoot
{
    /// <summary>The whole of it, with every kind of value in it.</summary>
    public const string Text = """
        spoolbook: 1
        title: The Short Pier
        code: PIER
        invented: An invented scenario, made up to be spoilt.
        gauge: 16mm
        project-at: 24
        paper: a4
        units: feet
        language: en
        meter-for: adapted
        school: {name: Short Pier Film School, logo: logo.svg, colours: ["#0f4c5c", "#9a3412"]}
        people:
          - {id: ana, name: Ana Vesterholt-Bui, role: Assistant}
        days:
          - {day: 1, on: 2026-10-04, where: The pier, note: Mud}
        shots:
          - {scene: 1, shot: A, what: She comes down the steps, screen: 12s, light: daylight}
          - {scene: 1, shot: B, what: The rope, screen: 6s}
        plan: {running-time: 4min, ratio: 4}
        lab:
          name: Brackwater
          processes: [ecn-2, bw-reversal]
          push-most: 2
          services: [prep, scan]
          needed-by: 2026-10-20
          return-to: [The Short Pier]
          bill-to: [The Short Pier]
          consignments:
            - {sent: 2026-10-06, rolls: [R01], how: By hand, receipt: Signed for}
        rates:
          currency: EUR
          process:
            - {process: ecn-2, foot: 0.32, minimum: 25}
          push-stop: 12
          prep-roll: 8
          scan-foot: 0.45
          shipping: 18.50
          tax: 19%
        lots:
          - {lot: N250-A, stock: Colour negative 250 D, emulsion: 0412-118, ei: 250, balance: daylight, reciprocity: [{time: 1s, stops: 0}, {time: 10s, stops: 2/3}], process: ecn-2, length: 100ft, units: 3, unit-price: 38.50, expires: 2027-06}
        bodies:
          - {body: B1, speeds: [12, 16, 24, 48, 64], slowest: 12, fastest: 64, shutter: 133, marks: [{mark: open, open: 1, stops: 0}, {mark: half, open: 1/2, stops: 1}], finder-loss: 20%, full-wind: 18ft, loading-speed: 16, counter-wraps: 1000, takes: 100ft, value: 2400, out: 1, back: 1}
        lenses:
          - {lens: 25mm, focal: 25, widest: 1.4, smallest: 22, nearest: 1.5ft, value: 310}
        filters:
          - {filter: "85", stops: 2/3, mireds: 112}
        meters:
          - {meter: M1, value: 190}
        rolls:
          - roll: R01
            lot: N250-A
            unit: 1
            body: B1
            load: {on: 2026-10-04 09:10, by: ana, light: subdued, head: 4+00, loops: set, plate: closed, speed-after: 24}
            log:
              - wind: full
              - take: {scene: 1, shot: A, take: 1, to: 12+10, lens: 25mm, stop: 5.6, reading: 5.6 1/3, focus: 8ft, filter: "85", mark: ng, at: 09:20, dial: 12ft}
              - wind: {at: 09:30}
              - take: {scene: 1, shot: A, take: 2, frames: 8s, speed: 24, lens: 25mm, stop: 4/5.6, focus: 5ft 6in, measured: 5ft 6in, metered-at: 1/80, mark: good, fade-out: 24fr, shutter: half}
              - rewind: {to: 20+00, shutter: closed}
              - take: {scene: 1, shot: B, take: 1, to: 35+00, lens: 25mm, stop: 4, mark: hold, fade-in: 24fr, every: 2s, exposure: 0.5s}
              - note: Sun out
              - run-off: {to: 100+00, lens: capped}
            unload: {on: 2026-10-04 16:45, by: ana, light: subdued, tail: 2+00}
            lab: {process: ecn-2, push: 1}
        """;

    /// <summary>The production with its logo, an SVG that every paper can draw.</summary>
    public static TextFiles Files { get; } = With(Text);

    /// <summary>Another text with the same logo.</summary>
    public static TextFiles With(string text) => TextFiles.OneFile(text).With("logo.svg", Logo);

    static byte[] Logo =>
        Encoding.UTF8.GetBytes(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 4 4\"><rect x=\"0\" y=\"0\" width=\"4\" height=\"4\"/></svg>"
        );
}
