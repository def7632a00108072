namespace Spoolbook.Beginning;

/// <summary>A person: <c>Leila Sands, Director</c>, or <c>leila: Leila Sands, Director</c>.</summary>
/// <param name="Id">The short name that the log uses.</param>
internal sealed record PersonAnswer(string Id, string Name, string Role)
{
    public const string Example = "Leila Sands, Director";

    public static Answered<PersonAnswer> Parse(string text, IReadOnlyCollection<string> taken)
    {
        var (id, parts) = NamedParts.Of(text);
        return parts.Length == 0
            ? Answered<PersonAnswer>.Not($"Say who it is, as in: {Example}")
            : Answered<PersonAnswer>.As(new PersonAnswer(id ?? FreeId(parts[0], taken), parts[0], string.Join(", ", parts.Skip(1))));
    }

    public bool IsDirector => Role.Equals("director", StringComparison.OrdinalIgnoreCase);

    public bool IsCinematographer => Role.ToLowerInvariant() is "cinematographer" or "director of photography" or "dop" or "dp" or "camera";

    static string FreeId(string name, IReadOnlyCollection<string> taken)
    {
        var first = name.Split(' ')[0].ToLowerInvariant();
        return Enumerable.Range(1, 99).Select(n => n == 1 ? first : $"{first}{n}").First(id => !taken.Contains(id));
    }
}
