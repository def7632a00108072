using System.Collections.Immutable;
using System.Globalization;
using Spoolbook.Entry;
using Spoolbook.Reading.Beginning;
using Spoolbook.Reading.Files;

namespace Spoolbook.Beginning;

/// <summary>
/// The files of a new production. They teach: each key has a few words beside it, and what is not known yet is a comment to take the
/// mark off.
/// </summary>
internal static class BegunProduction
{
    public static ImmutableArray<BegunFile> FilesOf(NewAnswers answers) =>
        [
            new("production.yaml", ProductionText(answers)),
            new("stock.yaml", StockText(answers)),
            new("kit.yaml", KitText(answers)),
            new(SheetNames.Rolls + "/how-to.txt", RollsText(answers)),
            .. Logo(answers),
        ];

    static IEnumerable<BegunFile> Logo(NewAnswers answers) =>
        answers.From?.Production.School?.Logo is { Bytes.IsDefaultOrEmpty: false } logo
            ? [new BegunFile(logo.File.Value.Replace('\\', '/'), logo.Bytes)]
            : [];

    static string ProductionText(NewAnswers a)
    {
        var from = a.From;
        var text = new Commented()
            .Line("# yaml-language-server: $schema=schemas/production.schema.json")
            .Line("# What the production is, who is on it, and what the lab must know.")
            .Line("# A line that begins with # is not read: take the # off and fill it in. `spoolbook check` says what is wrong.")
            .Line("spoolbook: 1")
            .Line("title: " + YamlWords.Of(a.Title))
            .Line("code: " + YamlWords.Of(a.Code), "on every can and label: short, and no other production's");
        Setting("gauge", a.Gauge, "16mm", "of all its film");
        Setting("project-at", a.ProjectAt, "24", "frames a second on the screen: running times go by it");
        Setting("paper", a.Paper, "a4", "a4 or letter");
        Setting("units", null, "feet", "feet or metres, on the papers; in the log write either");
        Setting("language", null, "en", "of the papers: en or de");
        Carried("meter-for", "labels", "school");
        if (from?.Has("meter-for") != true)
        {
            text.Line("# meter-for: adapted", "the meter is set to the exposure time less what the finder takes;")
                .Line("", "`marked`: to the time on the camera's dial");
        }

        text.Line();
        People(a, text);
        text.Line().Line("# A day's number is on every report of that day.");
        text.Line(a.FirstDay is null ? "# days:" : "days:");
        if (a.FirstDay is { } first)
        {
            text.Line($"  - {{day: 1, on: {YamlWords.Of(first)}}}");
        }
        else
        {
            text.Line("#   - {day: 1, on: 2026-10-02}");
        }

        text.Line($"{(a.FirstDay is null ? "#   -" : "  # -")} {{day: 2, on: {NextDay(a)}, where: The landing stage, note: Call 06:30}}");
        text.Line()
            .Line("# The shot list. With it the papers say what is got and what is still to get; `screen` is the time wanted in the cut.");
        if (a.Shots.IsEmpty)
        {
            text.Line("# shots:").Line("#   - {scene: 1, shot: A, what: \"The quay, wide\", screen: 12s, light: daylight}");
        }
        else
        {
            text.Line("shots:");
            foreach (var shot in a.Shots)
            {
                text.Line($"  - {ShotText(shot)}");
            }
        }

        text.Line().Line("# plan: {running-time: 4min, ratio: 5}", "with it `check` and the summary say whether the stock will last");
        text.Line();
        Lab(a, text);
        text.Line();
        if (from?.Has("rates") == true)
        {
            text.Line($"# Rates of {Plain(from.Production.Title.Value)}: ask the lab whether they still hold.")
                .Lines(from.Text(a, "rates"));
        }
        else
        {
            text.Line("# What things cost, by the lab's price list. Without it no paper has a sum.")
                .Line("# rates:")
                .Line("#   currency: EUR")
                .Line("#   process:")
                .Line("#     - {process: ecn-2, foot: 0.30, minimum: 25}")
                .Line("#   scan-foot: 0.45")
                .Line("#   tax: 19%");
        }

        Carried("rules");
        return text.ToString();

        void Setting(string key, string? value, string usual, string about)
        {
            if (value is null && from?.Has(key) == true)
            {
                Carried(key);
            }
            else
            {
                text.Line($"{key}: {YamlWords.Of(value ?? usual)}", about);
            }
        }

        void Carried(params string[] keys)
        {
            if (from?.Text(a, keys) is { Length: > 0 } lines)
            {
                text.Lines(lines);
            }
        }
    }

    static void People(NewAnswers a, Commented text)
    {
        var lines = a.People.Select(p =>
            $"{{id: {YamlWords.Of(p.Id)}, name: {YamlWords.Of(p.Name)}{(p.Role.Length == 0 ? "" : $", role: {YamlWords.Of(p.Role)}")}}}"
        );
        text.Line("# Whoever is in the log, by a short id. Once people are listed, an id that is not here is an error.");
        if (a.From?.Has("people") == true)
        {
            text.Lines(a.From.Text(a, "people", [.. lines]));
        }
        else if (a.People.IsEmpty)
        {
            text.Line("# people:").Line("#   - {id: ada, name: Ada Example, role: Camera assistant}");
        }
        else
        {
            text.Line("people:");
            foreach (var line in lines)
            {
                text.Line($"  - {line}");
            }
        }

        Named("director", a.People.FirstOrDefault(p => p.IsDirector)?.Id);
        Named("cinematographer", a.People.FirstOrDefault(p => p.IsCinematographer)?.Id);
        text.Lines(a.From?.Text(a, "learners") ?? "");

        void Named(string key, string? id)
        {
            if (id is null && a.From?.Has(key) == true)
            {
                text.Lines(a.From.Text(a, key));
            }
            else
            {
                text.Key("", key, id is null ? null : YamlWords.Of(id), "ada", "by id: on camera reports, labels and orders");
            }
        }
    }

    static void Lab(NewAnswers a, Commented text)
    {
        if (a.Lab.IsEmpty && a.From?.Has("lab") == true)
        {
            text.Line($"# As agreed for {Plain(a.From.Production.Title.Value)}: ring the lab, and take out what no longer holds.");
            text.Lines(a.From.Text(a, "lab"));
            return;
        }

        var mark = a.Lab.IsEmpty ? "# " : "";
        string[] processes = [.. a.Lots.Select(l => l.Process!).Distinct()];
        text.Line("# The lab works by what is written here and does not phone first. Ask before you shoot what it runs, and on which days.")
            .Line($"{mark}lab:")
            .Line($"{mark}  name: {(a.Lab.IsEmpty ? "The lab's name" : YamlWords.Of(a.Lab[0]))}");
        if (a.Lab.Length > 1)
        {
            text.Line($"  address: [{string.Join(", ", a.Lab.Skip(1).Select(YamlWords.Of))}]");
        }
        else
        {
            text.Line(
                "  # address: [3 Dock Road, Port Example]".Replace("  # ", mark.Length > 0 ? "#   " : "  # ", StringComparison.Ordinal)
            );
        }

        var indent = mark.Length > 0 ? "#   " : "  # ";
        text.Line($"{indent}contact: [Ask for intake, 555-0100]")
            .Line(
                processes.Length == 0 || mark.Length > 0
                    ? $"{indent}processes: [ecn-2, bw-reversal]"
                    : $"  processes: [{string.Join(", ", processes.Select(YamlWords.Of))}]",
                "what it runs, as it calls them; `check` holds every roll against it"
            )
            .Line($"{indent}push-most: 2", "the farthest that it pushes or pulls, in stops")
            .Line($"{indent}services: [prep, scan]", "for every roll unless the roll says otherwise")
            .Line($"{indent}needed-by: 2026-10-20")
            .Line($"{indent}return-to: [The production, 5 Mill Lane]")
            .Line($"{indent}bill-to: [\"Who pays, 555-0101\"]")
            .Line($"{indent}in-doubt: [\"Whom the lab calls, 555-0102, at any hour\"]")
            .Line($"{indent}agreed: [What was promised on the phone]");
    }

    static string StockText(NewAnswers a)
    {
        var text = new Commented()
            .Line("# yaml-language-server: $schema=schemas/stock.schema.json")
            .Line("# The raw stock that came, a lot each: cans of one stock with one emulsion number.")
            .Line("# Number the cans of a lot from 1, and write the number on the can: a roll says which one it was.")
            .Line("spoolbook: 1");
        if (a.Lots.IsEmpty)
        {
            return text.Line("# lots:")
                .Line("#   - lot: N250-A", "your name for it, as in the log")
                .Line("#     stock: Colour negative 250 D", "as on the can")
                .Line("#     emulsion: 0412-118", "as on the can")
                .Line("#     ei: 250")
                .Line("#     balance: daylight", "daylight, tungsten, or none for black and white")
                .Line("#     process: ecn-2", "as the lab calls it")
                .Line("#     length: 100ft", "film in a can")
                .Line("#     units: 6", "cans")
                .ToString();
        }

        text.Line("lots:");
        foreach (var lot in a.Lots)
        {
            Lot(lot, lot == a.Lots[0]);
        }

        return text.Line()
            .Line("# What happens to it outside of the camera, in order: the book of cans left goes by it.")
            .Line("# stock-log:")
            .Line($"#   - out-of-cold: {{lot: {YamlWords.Of(a.Lots[0].Name)}, on: 2026-10-01 21:30, from: fridge}}")
            .Line($"#   - came: {{lot: {YamlWords.Of(a.Lots[0].Name)}, units: [7, 8], on: 2026-10-03}}")
            .ToString();

        // The first one teaches; the others are what is known.
        void Lot(LotAnswer lot, bool teaches)
        {
            Known("- lot", YamlWords.Of(lot.Name), "", "your name for it, as in the log");
            Known("  stock", YamlWords.Of(lot.Stock), "", "as on the can");
            Known("  emulsion", null, "0412-118", "as on the can: two batches in one scene may not match");
            Known("  ei", lot.Index, "", "the index it is rated at, in the light it is balanced for");
            Known("  balance", lot.Balance, "daylight", "daylight, tungsten, or none for black and white");
            Known("  process", YamlWords.Of(lot.Process!), "", "as the lab calls it");
            Known("  length", lot.Length, "", "film in a can");
            Known("  perforation", lot.Perforation, "2R", "1R does not run on sprockets with teeth on both sides");
            Known("  units", lot.Units, "", "cans");
            Known("  unit-price", null, "38.50", "of a can");
            Known("  expires", lot.Expires, "2027-06", "as on the can");
            Known("  handling", null, "[In the fridge]", "how it was kept and carried: the lab asks when film is fogged");

            void Known(string key, string? value, string example, string about)
            {
                if (teaches)
                {
                    var indent = key.StartsWith(' ') ? "    " : "  ";
                    text.Key(indent, key.TrimStart(), value, example, about);
                }
                else if (value is not null)
                {
                    text.Line($"  {key}: {value}");
                }
            }
        }
    }

    static string KitText(NewAnswers a)
    {
        var from = a.From;
        var text = new Commented()
            .Line("# yaml-language-server: $schema=schemas/kit.schema.json")
            .Line("# What was borrowed and must go back. Write `out` where it is more than one, `back` when it is back.")
            .Line("spoolbook: 1");
        if (from is not null)
        {
            text.Line($"# Kit of {Plain(from.Production.Title.Value)}: count it again, and look at what is marked `last time`.");
        }

        text.Line();
        Section("loan", [], "# loan: {owner: Film department, borrowed-by: ada, on: 2026-10-01, due: 2026-10-07}\n");
        text.Line();
        if (from?.Has("bodies") == true)
        {
            text.Lines(from.Text(a, "bodies", [.. a.Bodies.Select(Flow)]));
        }
        else
        {
            Bodies(a, text);
        }

        text.Line();
        Section(
            "lenses",
            [.. a.Lenses.Select(Flow)],
            "# lenses:\n#   - {lens: 25mm, focal: 25, widest: 1.4, smallest: 22, nearest: 1.5ft, made-for: prism, serial: \"18834\"}\n"
        );
        text.Line();
        Section("filters", [], "# filters:\n#   - {filter: \"85\", what: Daylight filter for tungsten stock, stops: 2/3}\n");
        text.Line();
        Section("meters", [], "# meters:\n#   - {meter: M1, what: Incident meter}\n");
        Section("motors", [], "");
        text.Line();
        Section(
            "items",
            [],
            "# items:\n#   - {item: Lens caps, out: 3}\n#   - {item: Rewind key}\n#   - {item: Take-up spools, take-up: yes, out: 2}"
                + "  # without one nothing can be loaded\n"
        );
        return text.ToString();

        void Section(string key, IReadOnlyCollection<string> items, string example)
        {
            if (from?.Has(key) == true)
            {
                text.Lines(from.Text(a, key, items));
            }
            else if (items.Count > 0)
            {
                text.Line($"{key}:").Lines(string.Concat(items.Select(item => $"  - {item}\n")));
            }
            else
            {
                text.Lines(example);
            }
        }
    }

    static void Bodies(NewAnswers a, Commented text)
    {
        if (a.Bodies.IsEmpty)
        {
            text.Line("# bodies:")
                .Line("#   - body: B1", "its name in the log")
                .Line("#     what: Spring-wound 16 mm reflex camera")
                .Line("#     speeds: [12, 16, 24, 32, 48, 64]", "as engraved")
                .Line("#     shutter: 133", "degrees, fully open: exposure times go by it")
                .Line("#     full-wind: 18ft", "film that one full wind drives: run one out and read the dial");
            return;
        }

        text.Line("bodies:");
        foreach (var body in a.Bodies)
        {
            text.Line($"  - body: {YamlWords.Of(body.Name)}", "its name in the log");
            if (body.What.Length > 0)
            {
                text.Line($"    what: {YamlWords.Of(body.What)}");
            }

            Known("serial", "\"10437\"", "how it is known when it comes back");
            Known("speeds", "[12, 16, 24, 32, 48, 64]", "as engraved");
            Known("shutter", "133", "degrees, fully open: exposure times go by it");
            Known("finder-loss", "20%", "light that a reflex finder takes away from the film");
            Known("full-wind", "18ft", "film that one full wind drives: run one out and read the dial");
            Known("takes", "100ft", "the longest roll that goes in");
            text.Key("    ", "loading-speed", null, "16", "the speed to thread it at")
                .Key("    ", "turret", null, "[25mm, 10mm, 75mm]", "its lenses, hole by hole");

            void Known(string key, string example, string about) =>
                text.Key("    ", key, body.Keys.TryGetValue(key, out var value) ? Value(value) : null, example, about);
        }
    }

    static string RollsText(NewAnswers a)
    {
        var lot = a.Lots.FirstOrDefault()?.Name ?? "N250-A";
        var by = a.People.FirstOrDefault(p => p.Role.Contains("assist", StringComparison.OrdinalIgnoreCase)) ?? a.People.FirstOrDefault();
        var id = by?.Id ?? a.From?.Production.People.FirstOrDefault()?.Id.Value;
        var hand = id is null ? "" : $", by: {YamlWords.Of(id)}";
        var day = a.FirstDay ?? "2026-10-02";
        var body = a.Bodies.FirstOrDefault()?.Name ?? a.From?.Production.Bodies.FirstOrDefault()?.Name.Value;
        var lens = a.Lenses.FirstOrDefault()?.Name ?? a.From?.Production.Lenses.FirstOrDefault()?.Name.Value;
        var with = lens is null ? "" : $"lens: {YamlWords.Of(lens)}, ";
        var who = id is null ? "" : $" by {Word(id)}";
        var speed = a.ProjectAt ?? (a.From?.Has("project-at") == true ? a.From.Production.ProjectedAt.ToString() : "24");
        return new Commented()
            .Line(
                "Each roll has a file of its own here: rolls/r01.yaml, rolls/r02.yaml. It begins when the roll is loaded, has a line in its"
            )
            .Line("log for everything that happens to the film, in order, and ends with `unload`. The command writes it, a line at a time:")
            .Line()
            .Line(
                $"  spoolbook load R01 {Word(lot)}/1{(body is null ? "" : $" in {Word(body)}")}{who} {day} 9:15 subdued head 4 "
                    + $"{speed}fps ready all"
            )
            .Line("  spoolbook log wind")
            .Line($"  spoolbook log \"1A/1 to 14+10 f5.6 {(lens is null ? "" : $"lens {Word(lens)} ")}7ft G\"")
            .Line($"  spoolbook unload {day} 16:45{who} subdued tail 2")
            .Line()
            .Line("Without a line each of them asks; `spoolbook log` stays open for one line after the other. After each it says what is")
            .Line("left, and what is wrong. `spoolbook log --undo` takes the last one back. By hand the same roll is:")
            .Line()
            .Line("    # yaml-language-server: $schema=../schemas/roll.schema.json")
            .Line("    spoolbook: 1")
            .Line("    roll: R01")
            .Line($"    lot: {YamlWords.Of(lot)}")
            .Line("    unit: 1", "the number on the can")
            .Lines(body is null ? "" : $"    body: {YamlWords.Of(body)}\n")
            .Line($"    load: {{on: {day} 09:15{hand}, light: subdued, head: 4+00, loops: set, plate: closed, speed-after: {speed}}}")
            .Line("    log:")
            .Line("      - wind: full")
            .Line($"      - take: {{scene: 1, shot: A, take: 1, to: 14+10, {with}stop: 5.6, focus: 7ft, mark: good}}")
            .Line($"    unload: {{on: {day} 16:45{hand}, light: subdued, tail: 2+00, short-end: kept}}")
            .Line()
            .Line(
                "A length is written as the dial shows it: 14+10 (feet and frames), 14.5ft, 4.4m, or 12s at the take's speed. A take begins"
            )
            .Line("where the film is unless it says `from`. No `unload` while the roll is in the camera. This file is not read.")
            .ToString();
    }

    // A name as a word of a line, which the shell leaves as it is.
    static string Word(string name) => name.Contains(' ', StringComparison.Ordinal) ? $"'\"{name}\"'" : name;

    static string ShotText(ListedShot shot)
    {
        (string Key, string? Value)[] keys =
        [
            ("scene", shot.Scene),
            ("shot", shot.Shot),
            ("what", shot.What),
            ("screen", shot.Screen),
            ("light", shot.Light),
        ];
        return $"{{{string.Join(", ", keys.Where(k => k.Value is not null).Select(k => $"{k.Key}: {YamlWords.Of(k.Value!)}"))}}}";
    }

    static string Flow(BodyAnswer body) =>
        Flow([
            ("body", body.Name),
            ("what", body.What.Length == 0 ? null : body.What),
            .. body.Keys.Select(k => (k.Key, (string?)k.Value)),
        ]);

    static string Flow(LensAnswer lens) =>
        Flow([
            ("lens", lens.Name),
            ("what", lens.What.Length == 0 ? null : lens.What),
            ("focal", lens.Focal),
            ("widest", lens.Widest),
            ("smallest", lens.Smallest),
            ("nearest", lens.Nearest),
            ("made-for", lens.MadeFor),
        ]);

    static string Flow(IEnumerable<(string Key, string? Value)> keys) =>
        $"{{{string.Join(", ", keys.Where(k => k.Value is not null).Select(k => $"{k.Key}: {Value(k.Value!)}"))}}}";

    static string NextDay(NewAnswers a) =>
        DateOnly.TryParseExact(a.FirstDay ?? "2026-10-02", "yyyy-MM-dd", out var first)
            ? first.AddDays(1).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
            : "2026-10-03";

    // A list is written already.
    static string Value(string value) => value.StartsWith('[') ? value : YamlWords.Of(value);

    static string Plain(string title) => title.ReplaceLineEndings(" ");
}
