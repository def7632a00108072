namespace Spoolbook.Commands;

/// <summary>The examples below each command's help and on its manual page; a test runs each of them through the parser.</summary>
internal static class Examples
{
    static readonly Dictionary<string, Example[]> _all = new(StringComparer.Ordinal)
    {
        [""] =
        [
            new("new my-film", "begin a production"),
            new("check", "what is wrong with the production that you are in"),
            new("make", "check it, and make its papers"),
        ],
        ["new"] =
        [
            new("new ferry", "asks what it must know"),
            new("new ferry --from ../heron --shots shots.csv", "kit and people of an earlier production, and a shot list"),
            new("new ferry --yes --title \"The Last Ferry\"", "asks nothing"),
        ],
        ["make"] =
        [
            new("make", "all papers of the production that you are in"),
            new("make ferry --only lab-order --only can-labels", "two papers of it, and no other is touched"),
            new("make term-one", "all productions in a folder, on every core"),
        ],
        ["watch"] = [new("watch", "at each save, until Ctrl-C"), new("watch ferry --serve", "and show the papers to a browser")],
        ["check"] =
        [
            new("check", "the production that you are in"),
            new("check rolls/r01.yaml --strict", "the production of this roll; a warning fails"),
            new("check ferry --format sarif", "for an editor or a code host"),
        ],
        ["status"] = [new("status", "where every foot is"), new("status ferry --format json", "for a program")],
        ["log"] =
        [
            new("log \"1A/4 to 70 16fps f8 25mm G\"", "a take"),
            new("log \"R02: wind\"", "of the roll R02, where several are in cameras"),
            new("log --undo", "take the last line back"),
        ],
        ["load"] = [new("load", "asks"), new("load R04 N250-A/3 in B1 by ines 9:15 head 4", "all of it at once")],
        ["unload"] =
        [
            new("unload", "asks"),
            new("unload 16:45 tail 2, 38 left", "all of it at once"),
            new("unload 16:45 tail 2, G 45 H 22 NG 21 W 12 total 100 takes 10", "with the boxes at the foot of the paper sheet"),
        ],
        ["import"] =
        [
            new("import takes.csv --dry-run", "what would change"),
            new("import papers/footage.xlsx ferry", "the sheet of takes of the workbook"),
            new("import --undo", "take the last import back"),
        ],
        ["ship"] =
        [
            new("ship term-one --dry-run", "what would go to the lab, and what is in the way"),
            new("ship term-one --lab \"Harbour Film Lab\" --sent 2026-10-16", "one consignment, with its papers"),
        ],
        ["receive"] =
        [
            new("receive term-one --box 2 --by ines", "all cans of a box are back"),
            new("receive term-one HERON/R03/2 --note \"31+12 Scratch\"", "a can, and what the lab says of it"),
            new("receive term-one", "what is missing"),
        ],
        ["explain"] =
        [
            new("explain", "all checks"),
            new("explain speed/spring-overrun", "one of them"),
            new("explain fog", "those that have this word in their names"),
        ],
        ["completion"] =
        [
            new("completion bash", "for bash; in ~/.bashrc: eval \"$(spoolbook completion bash)\""),
            new("completion fish", "for fish"),
        ],
        ["schema"] =
        [
            new("schema roll", "of a roll file"),
            new("schema --into", "write those of the production that you are in, and point its files to them"),
        ],
        ["reckon"] =
        [
            new("reckon length 83+38 --to 35mm", "the same frames on 35 mm"),
            new("reckon depth --lens 25mm --stop 4 --focus 6ft", "depth of field"),
            new("reckon exposure --help", "what to give a sum"),
        ],
        ["reckon length"] = [new("reckon length 83+38", "in every unit"), new("reckon length 12s --at 16 --units metres", "at 16 fps")],
        ["reckon time"] =
        [
            new("reckon time 100ft", "at 24 frames a second"),
            new("reckon time 100ft --at 48", "slow motion: in the camera and on the screen"),
        ],
        ["reckon exposure"] =
        [
            new("reckon exposure --speed 24 --angle 133 --finder-loss 20% --ei 500 --incident 80fc", "the stop to set"),
            new("reckon exposure --timed 10s --reciprocity 1s:1 --reciprocity 10s:2", "a long exposure by the stock's table"),
        ],
        ["reckon depth"] =
        [
            new("reckon depth --lens 25mm --stop 4 --focus 6ft", "from and to where it is sharp"),
            new("reckon depth --lens 10mm --stop 5.6 --focus inf", "and the hyperfocal distance"),
        ],
        ["reckon spool"] =
        [
            new("reckon spool --diameter 61mm", "on a 100 ft daylight spool"),
            new("reckon spool --diameter 6.1cm --core 50mm", "on a core that you measured"),
        ],
        ["reckon lapse"] =
        [
            new("reckon lapse --event 3h --screen 30s", "the interval"),
            new("reckon lapse --interval 12s --frames 900", "how long the event may last"),
        ],
    };

    /// <summary>The examples of a command by its whole name; empty where there are none.</summary>
    public static IReadOnlyList<Example> Of(string command) => _all.GetValueOrDefault(command) ?? [];

    /// <summary>Where a page tells more of a command.</summary>
    public static string More(string command) =>
        command switch
        {
            "import" => "Pages: IMPORT.md, COMMANDS.md",
            "log" or "load" or "unload" => "Pages: SHORT-FORM.md, COMMANDS.md",
            "explain" or "check" => "Pages: CHECKS.md, COMMANDS.md",
            "schema" => "Pages: FORMAT.md, KEYS.md, COMMANDS.md",
            "reckon" => "Pages: RECKON.md, FORMULAS.md",
            _ when command.StartsWith("reckon ", StringComparison.Ordinal) => "Pages: RECKON.md, FORMULAS.md",
            _ => "Pages: FIRST-TEN-MINUTES.md, COMMANDS.md",
        };
}
