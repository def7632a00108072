using Spoolbook.Reading.Forms;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading.Keys;

/// <summary>The keys of production.yaml.</summary>
static class ProductionKeys
{
    public static readonly ValueKey<string> Title = new("title", WordForms.Text, "The working title.")
    {
        Required = true,
        Example = "The Ferry Light",
    };
    public static readonly ValueKey<string> Code = new("code", WordForms.Code, "A short code that goes on cans: letters, digits, hyphens.")
    {
        Required = true,
        Example = "FERRY",
    };
    public static readonly ValueKey<string> Invented = new(
        "invented",
        WordForms.Text,
        "Only for demonstrations: that it is an invented scenario, in the words printed on every paper."
    )
    {
        Example = "An invented scenario",
    };
    public static readonly ValueKey<Film.Gauge> Gauge = new("gauge", FilmForms.Gauge, "The gauge of all its film; 16mm unless written.")
    {
        Example = "16mm",
    };
    public static readonly ValueKey<Film.Speed> ProjectAt = new(
        "project-at",
        FilmForms.Speed,
        "The speed it will be projected at; 24 unless written."
    )
    {
        Example = "24",
    };
    public static readonly ValueKey<PaperSize> Paper = new("paper", WordForms.Paper, "The paper it prints on; letter unless written.")
    {
        Example = "letter",
    };
    public static readonly MapKey Labels = new(
        "labels",
        LabelKeys.Table,
        "What can labels are printed on; plain paper to cut unless written."
    )
    {
        Example = "{sheet: a4-8, start: 3}",
    };
    public static readonly ValueKey<LengthUnit> Units = new("units", WordForms.Unit, "The unit of its papers; feet unless written.")
    {
        Example = "feet",
    };
    public static readonly ValueKey<string> Language = new("language", WordForms.Language, "The language of its papers; en unless written.")
    {
        Example = "en",
    };
    public static readonly ValueKey<FinderPractice> MeterFor = new(
        "meter-for",
        WordForms.MeterFor,
        "Which exposure time the meters are set for: less what the finder takes, or as marked."
    )
    {
        Example = "adapted",
    };
    public static readonly MapKey School = new(
        "school",
        SchoolKeys.Table,
        "The school that the production belongs to, in the head of the papers."
    )
    {
        Example = "{name: Example Film School, logo: school.svg}",
    };
    public static readonly ValueKey<string> Director = new(
        "director",
        WordForms.Text,
        "The director, by a person's id: on camera reports, labels and orders."
    )
    {
        Example = "leila",
    };
    public static readonly ValueKey<string> Cinematographer = new(
        "cinematographer",
        WordForms.Text,
        "The cinematographer, by a person's id: on camera reports, labels and orders."
    )
    {
        Example = "marit",
    };
    public static readonly ValuesKey<string> Learners = new(
        "learners",
        WordForms.Text,
        "Who wants the learner's sheet, by a person's id: one is printed for each."
    )
    {
        Example = "[dov]",
    };
    public static readonly MapsKey People = new("people", PersonKeys.Table, "The crew.");
    public static readonly MapsKey Days = new("days", DayKeys.Table, "The shooting days.");
    public static readonly MapsKey Shots = new("shots", PlannedShotKeys.Table, "The shot list.");
    public static readonly MapKey Plan = new("plan", PlanKeys.Table, "What is planned.") { Example = "{running-time: 4min, ratio: 5}" };
    public static readonly MapKey Lab = new("lab", LabKeys.Table, "Where the film goes.");
    public static readonly MapKey Rates = new("rates", RatesKeys.Table, "What things cost.");
    public static readonly MapsKey Accept = new("accept", WaiverKeys.Table, "Rules broken intentionally in the whole production.");
    public static readonly MapKey Rules = new("rules", HouseRulesKeys.Table, "Levels and tolerances that are not the house's.")
    {
        Example = "{levels: {speed/spring-overrun: note}, tolerances: {spring-slack: 1+00}}",
    };
}
