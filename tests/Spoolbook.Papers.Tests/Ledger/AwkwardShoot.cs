namespace Spoolbook.Papers.Tests.Ledger;

/// <summary>
/// An invented production that makes trouble: names that a spreadsheet takes for formulas, patterns or numbers, a short
/// end of a short end, a roll in the camera, a roll over two days, a dissolve, fog, missing rates, a can with less film
/// than its label says, scenes that differ only in case.
/// </summary>
static class AwkwardShoot
{
    public const string Yaml = """
        spoolbook: 1
        title: "=Ferry & <Light> \"+1\""
        code: AWK-1
        invented: An invented scenario; nobody shot this.
        project-at: 24000/1001
        people:
          - {id: loader, name: "@Somebody", role: assistant}
        days:
          - {day: 1, on: 2026-10-02, where: "-indoors"}
          - {day: 2, on: 2026-10-03, where: "+outdoors"}
          - {day: 3, on: 2026-10-05, where: "=nowhere"}
        shots:
          - {scene: 7, shot: A, screen: 6s}
        plan: {running-time: 100s, ratio: 5}
        lab:
          name: "=An invented lab"
          services: [prep, scan, "ultrasonic clean"]
        rates:
          currency: EUR
          process:
            - {process: ecn-2, foot: 0.325, minimum: 25.005}
          prep-roll: 8.333
          scan-foot: 0.4567
          shipping: 18
          tax: 7.7%
        lots:
          - {lot: "N*", stock: "=Colour negative", ei: 250, process: ecn-2, length: 100ft, units: 3, unit-price: 38.505}
          - {lot: "N1", stock: "Ελλ – Кир ½ 𝄞", ei: 500, process: bw-reversal, length: 100ft, units: 2}
          - {lot: DUMMY, stock: Fogged, ei: 100, process: none, length: 100ft, units: 1, practice: yes}
        bodies:
          - body: B1
            speeds: [12, 24, 48]
            shutter: 133
        rolls:
          - roll: P1
            lot: DUMMY
            unit: 1
            practice: yes
            load: {on: 2026-10-01 09:00}
            log: [{take: {scene: 1, take: 1, to: 50+00, mark: good}}]
            unload: {on: 2026-10-01 10:00}
          - roll: "R1"
            lot: "N*"
            unit: 1
            body: B1
            load: {on: 2026-10-02 09:10, by: loader, head: 4+00}
            log:
              - take: {scene: 7, shot: A, take: 1, to: 14+11, mark: good, note: "=SUM(A1:A9)"}
              - take: {scene: "7a", take: 1, to: 21+00, mark: hold, note: "-1"}
              - take: {scene: "7*", take: 1, to: 29+07, mark: ng, note: "+cmd|' /C calc'!A0"}
              - take: {scene: ">6", take: 1, to: 40+39, mark: test, note: "@here, two\nlines and a tab\tand _x0041_"}
              - rewind: {to: 29+07, shutter: closed}
              - take: {scene: "07", take: 1, to: 35+00, mark: good, on: 2026-10-03}
            unload: {on: 2026-10-03 16:45, tail: 2+01}
            lab: {push: 0.5}
          - roll: "R2"
            short-end-of: "R1"
            length: 55+00
            body: B1
            load: {on: 2026-10-03 17:00, head: 3+00}
            log:
              - take: {scene: "7A", take: 1, to: 20+00, mark: good}
              - fog: {before: 1+20, after: 2+00}
            unload: {on: 2026-10-03 18:00, tail: 1+00}
            lab: {push: -1, services: [scan]}
          - roll: "R3"
            short-end-of: "R2"
            load: {on: 2026-10-05 08:00, head: 2+00}
            log:
              - take: {scene: 8, shot: B, take: 1, to: 12+00, mark: good}
              - run-off: {to: 15+00, lens: capped}
          - roll: "1E2"
            lot: N1
            unit: 2
            body: B1
            load: {on: 2026-10-05 09:00}
            log:
              - take: {scene: 8, shot: B, take: 2, to: 77+13, mark: good}
            unload: {on: 2026-10-05 12:00, short-end: thrown}
          - roll: "100"
            lot: "N*"
            unit: 2
            load: {on: 2026-10-05 13:00, head: 4+00}
            log: []
            unload: {on: 2026-10-05 14:00, tail: 1+00}
            lab: {send: no}
        """;
}
