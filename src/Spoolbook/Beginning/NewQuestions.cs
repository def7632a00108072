using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Spoolbook.Beginning;

/// <summary>All that is asked, in the order in which it is asked.</summary>
internal static class NewQuestions
{
    const int LongestCode = 8;

    public static ImmutableArray<NewQuestion> All { get; } =
    [
        new("title", "Title", "The working title.", (a, text) => As(a with { Title = text })) { Usual = a => a.Title },
        new("code", "Code, for the cans", "A short code that goes on every can: letters, digits, hyphens.", (a, text) =>
            As(a with { Code = text })
        )
        {
            Usual = a => a.Code.Length > 0 ? a.Code : CodeOf(a.Title),
        },
        new("gauge", "Gauge", "The gauge of the film: 16mm unless given.", (a, text) => As(a with { Gauge = text }))
        {
            Usual = _ => "16mm",
            Key = "gauge",
        },
        new("project-at", "Frames a second on the screen", "The speed that it will be projected at: 24 unless given.", (a, text) =>
            As(a with { ProjectAt = text })
        )
        {
            Usual = _ => "24",
            Key = "project-at",
        },
        new("paper", "Paper, a4 or letter", "The paper to print on: a4 or letter; a4 unless given.", (a, text) =>
            As(a with { Paper = text })
        )
        {
            Usual = _ => "a4",
            Key = "paper",
        },
        new("first-day", "First shooting day", "The first shooting day: 2026-10-02.", (a, text) => As(a with { FirstDay = text }))
        {
            Example = "2026-10-02",
        },
        new("lot", "Stock", $"A lot of raw stock, as on its cans: \"{LotAnswer.Example}\". Give it once for each lot.", (a, text) =>
            Add(LotAnswer.Parse(text, [.. a.Lots.Select(l => l.Name)]), lot => a with { Lots = a.Lots.Add(lot) })
        )
        {
            IsList = true,
            Example = LotAnswer.Example,
        },
        new("body", "Camera body", $"A camera body: \"{BodyAnswer.Example}\". Give it once for each.", (a, text) =>
            Add(BodyAnswer.Parse(text, Bodies(a)), body => a with { Bodies = a.Bodies.Add(body) })
        )
        {
            IsList = true,
            Example = BodyAnswer.Example,
            Key = "bodies",
        },
        new("lens", "Lenses", $"Lenses, by what is on their rings: \"{LensAnswer.Example}\". Give it as often as you like.", (a, text) =>
            As(a with { Lenses = a.Lenses.AddRange(LensAnswer.Parse(text)) })
        )
        {
            IsList = true,
            Example = LensAnswer.Example,
            Key = "lenses",
        },
        new("person", "Person", $"Somebody on the crew: \"{PersonAnswer.Example}\". Give it once for each.", (a, text) =>
            Add(PersonAnswer.Parse(text, People(a)), person => a with { People = a.People.Add(person) })
        )
        {
            IsList = true,
            Example = PersonAnswer.Example,
            Key = "people",
        },
        new("lab", "Lab", "The lab: its name, and after commas the lines of its address.", (a, text) =>
            As(a with { Lab = [.. text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)] })
        )
        {
            Example = "its name, street, town",
            Key = "lab",
        },
    ];

    /// <summary>A title out of a folder's name: <c>ferry-light</c> is Ferry light.</summary>
    public static string TitleOf(string folder)
    {
        var words = Path.GetFileName(Path.TrimEndingDirectorySeparator(folder)).Replace('-', ' ').Replace('_', ' ').Trim();
        return words.Length == 0 ? "Untitled" : char.ToUpperInvariant(words[0]) + words[1..];
    }

    /// <summary>A code out of a title: its first word that says something, in plain capitals.</summary>
    public static string CodeOf(string title)
    {
        var words = Capitals(title).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var code = words.FirstOrDefault(w => w is not ("THE" or "A" or "AN" or "DER" or "DIE" or "DAS")) ?? words.FirstOrDefault("FILM");
        return code[..Math.Min(code.Length, LongestCode)];
    }

    static string Capitals(string title)
    {
        var plain = new StringBuilder();
        foreach (var c in title.Normalize(NormalizationForm.FormD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark)
            {
                plain.Append(char.IsAsciiLetterOrDigit(c) ? char.ToUpperInvariant(c) : ' ');
            }
        }

        return plain.ToString();
    }

    static string[] Bodies(NewAnswers a) => [.. a.Bodies.Select(b => b.Name), .. a.From?.Production.Bodies.Select(b => b.Name.Value) ?? []];

    static string[] People(NewAnswers a) => [.. a.People.Select(p => p.Id), .. a.From?.Production.People.Select(p => p.Id.Value) ?? []];

    static Answered<NewAnswers> As(NewAnswers answers) => Answered<NewAnswers>.As(answers);

    static Answered<NewAnswers> Add<T>(Answered<T> answer, Func<T, NewAnswers> add)
        where T : class => answer.Value is { } value ? As(add(value)) : Answered<NewAnswers>.Not(answer.Objection);
}
