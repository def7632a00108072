using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of production.yaml.</summary>
static class ProductionKeys
{
    public static readonly ValueKey<string> Title = new("title", WordForms.Text, "The working title.") { Required = true, Example = "The Ferry Light" };
    public static readonly ValueKey<string> Code = new("code", WordForms.Code, "A short code that goes on cans: letters, digits, hyphens.") { Required = true, Example = "FERRY" };
    public static readonly ValueKey<string> Invented = new("invented", WordForms.Text, "Only for demonstrations: that it is an invented scenario, in the words printed on every paper.") { Example = "An invented scenario" };
    public static readonly ValueKey<Film.Gauge> Gauge = new("gauge", FilmForms.Gauge, "The gauge of all its film; 16mm unless written.") { Example = "16mm" };
    public static readonly ValueKey<Film.Speed> ProjectAt = new("project-at", FilmForms.Speed, "The speed it will be projected at; 24 unless written.") { Example = "24" };
    public static readonly ValueKey<PaperSize> Paper = new("paper", WordForms.Paper, "The paper it prints on; letter unless written.") { Example = "letter" };
    public static readonly MapKey Labels = new("labels", LabelKeys.Table, "What can labels are printed on; plain paper to cut unless written.") { Example = "{sheet: a4-8, start: 3}" };
    public static readonly ValueKey<LengthUnit> Units = new("units", WordForms.Unit, "The unit of its papers; feet unless written.") { Example = "feet" };
    public static readonly ValueKey<string> Language = new("language", WordForms.Language, "The language of its papers; en unless written.") { Example = "en" };
    public static readonly ValueKey<FinderPractice> MeterFor = new("meter-for", WordForms.MeterFor, "Which exposure time the meters are set for: less what the finder takes, or as marked.") { Example = "adapted" };
    public static readonly MapKey School = new("school", SchoolKeys.Table, "The school that the production belongs to, in the head of the papers.") { Example = "{name: Example Film School, logo: school.svg}" };
    public static readonly MapsKey People = new("people", PersonKeys.Table, "The crew.");
    public static readonly MapsKey Days = new("days", DayKeys.Table, "The shooting days.");
    public static readonly MapsKey Shots = new("shots", PlannedShotKeys.Table, "The shot list.");
    public static readonly MapKey Plan = new("plan", PlanKeys.Table, "What is planned.") { Example = "{running-time: 4min, ratio: 5}" };
    public static readonly MapKey Lab = new("lab", LabKeys.Table, "Where the film goes.");
    public static readonly MapKey Rates = new("rates", RatesKeys.Table, "What things cost.");
    public static readonly MapsKey Accept = new("accept", WaiverKeys.Table, "Rules broken on purpose in the whole production.");
    public static readonly MapKey Rules = new("rules", HouseRulesKeys.Table, "Levels and tolerances that are not the house's.") { Example = "{levels: {speed/spring-overrun: note}, tolerances: {spring-slack: 1+00}}" };
}

/// <summary>The keys of the can labels.</summary>
static class LabelKeys
{
    public static readonly ValueKey<LabelSheet> Sheet = new("sheet", WordForms.Labels, "The sheet, by its paper and how many labels it holds; cut: plain paper with lines to cut along.") { Example = "a4-8" };
    public static readonly ValueKey<int> Start = new("start", NumberForms.FromOne, "The first label that is still on the sheet, counted along the rows; 1 unless written.") { Example = "3" };

    public static readonly KeyTable Table = new("the labels", [Sheet, Start]);
}

/// <summary>The keys of a person.</summary>
static class PersonKeys
{
    public static readonly ValueKey<string> Id = new("id", WordForms.Text, "A short name that the log uses.") { Required = true, Example = "loader" };
    public static readonly ValueKey<string> Name = new("name", WordForms.Text, "The full name.") { Required = true, Example = "Ada Example" };
    public static readonly ValueKey<string> Role = new("role", WordForms.Text, "What the person does.") { Example = "camera assistant" };

    public static readonly KeyTable Table = new("a person", [Id, Name, Role]);
}

/// <summary>The keys of a shooting day.</summary>
static class DayKeys
{
    public static readonly ValueKey<int> Day = new("day", NumberForms.FromOne, "Its number, from 1.") { Required = true, Example = "1" };
    public static readonly ValueKey<DateOnly> On = new("on", TimeForms.Date, "The date.") { Required = true, Example = "2026-10-02" };
    public static readonly ValueKey<string> Where = new("where", WordForms.Text, "The place.") { Example = "the landing stage" };
    public static readonly ValueKey<string> Note = new("note", WordForms.Text, "Remarks.") { Example = "rain until noon" };

    public static readonly KeyTable Table = new("a shooting day", [Day, On, Where, Note]);
}

/// <summary>The keys of a shot on the list.</summary>
static class PlannedShotKeys
{
    public static readonly ValueKey<string> Scene = new("scene", WordForms.Text, "The scene, as text.") { Required = true, Example = "7" };
    public static readonly ValueKey<string> Shot = new("shot", WordForms.Text, "The shot's letter within the scene.") { Example = "B" };
    public static readonly ValueKey<string> What = new("what", WordForms.Text, "What is to be seen.") { Example = "the lamp goes out" };
    public static readonly ValueKey<Film.Ratio> Screen = new("screen", TimeForms.Duration, "Time wanted on the screen.") { Example = "6s" };
    public static readonly ValueKey<SubjectLight> Light = new("light", WordForms.SubjectLight, "The light that its takes are shot in, unless one says otherwise.") { Example = "daylight" };

    public static readonly ValueKey<int> Lamps = new("lamps", WordForms.Lamps, "The mains, where tubes, street lamps or other discharge lamps on plain ballasts light its takes.") { Example = "50hz" };

    public static readonly KeyTable Table = new("a shot on the list", [Scene, Shot, What, Screen, Light, Lamps]);
}

/// <summary>The keys of the plan.</summary>
static class PlanKeys
{
    public static readonly ValueKey<Film.Ratio> RunningTime = new("running-time", TimeForms.Duration, "Planned running time.") { Example = "4min" };
    public static readonly ValueKey<Film.Ratio> Ratio = new("ratio", NumberForms.AboveZero, "Planned shooting ratio: the n of n:1.") { Example = "5" };

    public static readonly KeyTable Table = new("the plan", [RunningTime, Ratio]);
}

/// <summary>The keys of the production's own rules.</summary>
static class HouseRulesKeys
{
    public static readonly NamesKey<Level?> Levels = new("levels", "checks or groups", WordForms.Level, "How grave the findings of a check, or of a group of them, are.") { Example = "{speed/spring-overrun: note, cover: off}" };
    public static readonly NamesKey<string> Tolerances = new("tolerances", "tolerances", WordForms.Text, "How much a check lets pass.") { Example = "{spring-slack: 1+00}" };

    public static readonly KeyTable Table = new("the production's rules", [Levels, Tolerances]);
}
