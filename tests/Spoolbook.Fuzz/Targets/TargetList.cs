namespace Spoolbook.Fuzz.Targets;

/// <summary>All targets. Made when asked for: each sets up its own production.</summary>
internal static class TargetList
{
    public static readonly IReadOnlyList<string> Names = ["yaml", "forms", "csv", "xlsx", "logo", "words", "template", "text", "lines"];

    public static ITarget Find(string name) =>
        name switch
        {
            "yaml" => new YamlTarget(),
            "forms" => new FormsTarget(),
            "csv" => new CsvTarget(),
            "xlsx" => new XlsxTarget(),
            "logo" => new LogoTarget(),
            "words" => new WordsTarget(),
            "template" => new TemplateTarget(),
            "text" => new TextTarget(),
            "lines" => new LinesTarget(),
            _ => throw new ArgumentException($"There is no target '{name}': {string.Join(", ", Names)}."),
        };
}
