using System.Globalization;
using System.Text;

namespace Spoolbook.Shoots;

/// <summary>
/// A school's folder with productions as students shoot them: twelve rolls of 100 ft each, twelve or thirteen takes a roll, a shot list,
/// stock of its own and one can from the shelf, a body on loan from the school. The same seed gives the same bytes.
/// </summary>
/// <param name="seed">The seed.</param>
/// <param name="productions">How many productions; from 1.</param>
/// <param name="rates">How often students slip.</param>
public sealed class TermOfShoots(int seed, int productions, MistakeRates rates)
{
    const int RollsEach = 12;

    // In frames of 16 mm film, 40 to the foot.
    const int Foot = 40,
        Head = 4 * Foot,
        LastTakeEnds = 96 * Foot,
        FullWind = 18 * Foot,
        ShotsEach = 78,
        BodiesOfSchool = 20,
        MostTakes = 8;

    static readonly string[] _first = ["Grey", "Last", "Quiet", "Salt", "Paper", "Night", "Copper", "Slow", "Winter", "Hollow"];
    static readonly string[] _second = ["Ferry", "Orchard", "Signal", "Moth", "Harbour", "Ladder", "Kite", "Goat", "Tram", "Lantern"];
    static readonly string[] _lenses = ["10mm", "25mm", "75mm"];
    static readonly string[] _stops = ["4", "5.6", "8", "11"];
    static readonly DateOnly _begin = new(2026, 9, 7);

    readonly Random _random = new(seed);

    /// <summary>Whether every roll went to the lab on the sixth day after it was shot; else they all wait.</summary>
    public bool IsSent { get; init; } = true;

    public int Productions => productions;

    public int Rolls { get; private set; }

    public int Takes { get; private set; }

    public int Mistakes { get; private set; }

    /// <summary>Writes the school's folder.</summary>
    public void WriteTo(string folder)
    {
        foreach (var (name, text) in Files())
        {
            var path = Path.Combine(folder, name);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, text);
        }
    }

    /// <summary>Its files, by their paths from the folder.</summary>
    public IEnumerable<(string Name, string Text)> Files()
    {
        yield return ("school.yaml", School());
        for (var at = 0; at < productions; at++)
        {
            foreach (var (name, text) in Production(at))
            {
                yield return ($"{FolderOf(at)}/{name}", text);
            }
        }
    }

    static string FolderOf(int at) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{(at % 2 == 0 ? "first-year" : "second-year")}/{TitleOf(at).ToLowerInvariant().Replace(' ', '-')}-{at:000}"
        );

    static string TitleOf(int at) => $"{_first[at % _first.Length]} {_second[at / _first.Length % _second.Length]}";

    // A body has one production a week.
    static string BodyOf(int at) => string.Create(CultureInfo.InvariantCulture, $"B{(at % BodiesOfSchool) + 1}");

    static DateOnly WeekOf(int at) => _begin.AddDays(7 * (at / BodiesOfSchool));

    string School()
    {
        var text = new StringBuilder("spoolbook: 1\nschool: {name: Harbour Street Film School}\n");
        Add(text, $"lots:\n  - {{lot: SHELF, stock: Colour negative 250 D, ei: 250, balance: daylight, ");
        Line(text, $"process: ecn-2, length: 100ft, units: {productions}, unit-price: 38.50}}");
        text.Append("bodies:\n");
        for (var body = 1; body <= BodiesOfSchool; body++)
        {
            Add(text, $"  - {{body: B{body}, what: Spring-wound 16 mm camera, serial: \"{10400 + body}\", ");
            Add(text, $"speeds: [12, 16, 24, 32, 48, 64], shutter: 133, finder-loss: 20%, full-wind: 18ft, spring: run-down, ");
            Line(text, $"loading-speed: 16, takes: 100ft}}");
        }

        text.Append("lenses:\n");
        foreach (var lens in _lenses)
        {
            Line(text, $"  - {{lens: {lens}, focal: {lens[..^2]}, widest: 2.8, smallest: 22, nearest: 1.5ft}}");
        }

        text.Append(
            "labs:\n  - {name: Brackwater Film Lab, processes: [ecn-2], push-most: 2, services: [prep, scan], "
                + "return-to: [Harbour Street Film School], "
        );
        text.Append(
            "in-doubt: [The store, 555-0100], agreed: [Scan flat.], "
                + "rates: {currency: EUR, process: [{process: ecn-2, foot: 0.32, minimum: 25}], scan-foot: 0.45}}\n"
        );
        text.Append("loans:\n");
        for (var at = 0; at < productions; at++)
        {
            Add(text, $"  - {{piece: {BodyOf(at)}, to: {FolderOf(at)}, out: {Day(WeekOf(at))}, ");
            Add(text, $"back: {Day(WeekOf(at).AddDays(6))}, came-back: {Day(WeekOf(at).AddDays(6))}, ");
            Line(text, $"condition: good}}");
        }

        return text.ToString();
    }

    IEnumerable<(string Name, string Text)> Production(int at)
    {
        var text = new StringBuilder("spoolbook: 1\n");
        Add(text, $"title: {TitleOf(at)}\ncode: P{at:000}\ninvented: An invented production\npeople: [{{id: ada, ");
        Line(text, $"name: Ada Pellworm}}, {{id: tom, name: Tom Ravensby}}]\ndays:");
        for (var day = 0; day < 4; day++)
        {
            Line(text, $"  - {{day: {day + 1}, on: {Day(WeekOf(at).AddDays(day + 1))}}}");
        }

        text.Append("shots:\n");
        for (var shot = 0; shot < ShotsEach; shot++)
        {
            Add(text, $"  - {{scene: {(shot / 6) + 1}, shot: {(char)('A' + (shot % 6))}, screen: {4 + (shot % 7)}s, ");
            Line(text, $"light: daylight}}");
        }

        text.Append("plan: {running-time: 10min, ratio: 4}\nlab: {needed-by: 2027-02-01}\n");
        yield return ("production.yaml", text.ToString());

        text.Clear();
        Add(text, $"spoolbook: 1\nlots:\n  - {{lot: OWN, stock: Colour negative 250 D, emulsion: 0412-{at:000}, ");
        Add(text, $"ei: 250, balance: daylight, process: ecn-2, length: 100ft, perforation: 2R, ");
        Line(text, $"units: {RollsEach}, unit-price: 38.50}}");
        Line(text, $"stock-log:\n  - came: {{lot: SHELF, units: [{at + 1}], from: shelf, on: {Day(WeekOf(at))}}}");
        yield return ("stock.yaml", text.ToString());

        var take = new Slate();
        for (var roll = 1; roll <= RollsEach; roll++)
        {
            yield return (string.Create(CultureInfo.InvariantCulture, $"rolls/r{roll:00}.yaml"), Roll(at, roll, take));
        }
    }

    string Roll(int at, int roll, Slate slate)
    {
        Rolls++;
        var day = WeekOf(at).AddDays(1 + ((roll - 1) / 3));
        var hour = 8 + ((roll - 1) % 3 * 3);
        var loaded = Slips(rates.YearSlipped) ? day.AddYears(-1) : day;
        var light = Slips(rates.LoadedInBrightLight) ? "bright" : "subdued";
        var by = Slips(rates.NoLoader) ? "" : ", by: ada";
        var isShelf = roll == RollsEach;
        var text = new StringBuilder("spoolbook: 1\n");
        Line(text, $"roll: R{roll:00}\nlot: {(isShelf ? "SHELF" : "OWN")}\nunit: {(isShelf ? at + 1 : roll)}\nbody: {BodyOf(at)}");
        Add(text, $"load: {{on: {Day(loaded)} {hour:00}:05{by}, light: {light}, head: 4+00, ");
        Line(text, $"loops: set, plate: closed, speed-after: 24}}\nlog:");
        var film = Head;
        while (true)
        {
            var isLong = Slips(rates.TakeLongerThanSpring);
            var length = isLong ? FullWind + (2 * Foot) : _random.Next(4 * Foot, 10 * Foot);
            if (film + length > LastTakeEnds)
            {
                break;
            }

            film += length;
            Takes++;
            var number = slate.Take + (slate.Take > 1 && Slips(rates.TakeNumberSkipped) ? 1 : 0);
            var letter = Slips(rates.ShotNotListed) ? "X" : slate.Letter;
            // A lens and a stop belong to the shot, take after take.
            var lens = Slips(rates.LensNotInKit) ? "16mm" : _lenses[(at + slate.Shot) % _lenses.Length];
            // Nobody wraps with a shot half got, or goes on for ever.
            var isLast = roll == RollsEach && film > 84 * Foot;
            var isGood = isLast || number >= MostTakes || (number >= 2 && _random.Next(2) == 0);
            var mark =
                isGood ? "good"
                : _random.Next(4) == 0 ? "hold"
                : "ng";
            text.Append("  - wind: {}\n");
            Add(text, $"  - take: {{scene: {slate.Scene}, shot: {letter}, take: {number}, to: {film / Foot}+{film % Foot:00}, ");
            Add(text, $"lens: {lens}, stop: {_stops[(at + (3 * slate.Shot)) % _stops.Length]}, focus: 8ft, ");
            Line(text, $"mark: {mark}}}");
            slate.Next(number, isGood, ShotsEach);
        }

        text.Append("  - run-off: {to: 100+00, lens: capped}\n");
        Add(text, $"unload: {{on: {Day(day)} {hour + 2:00}:40, by: tom, light: subdued, tail: 2+00}}\nlab: {{process: ecn-2, ");
        Line(text, $"push: 0{(IsSent ? $", sent: {Day(day.AddDays(6))}" : "")}}}");
        return text.ToString();
    }

    bool Slips(double rate)
    {
        var slips = _random.NextDouble() < rate;
        Mistakes += slips ? 1 : 0;
        return slips;
    }

    static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    static void Add(StringBuilder text, FormattableString part) => text.Append(part.ToString(CultureInfo.InvariantCulture));

    static void Line(StringBuilder text, FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
}
