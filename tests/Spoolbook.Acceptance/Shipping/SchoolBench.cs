using Spoolbook.Shipping;

namespace Spoolbook.Acceptance.Shipping;

/// <summary>A copy of the small school to ship from.</summary>
sealed class SchoolBench : IDisposable
{
    public static readonly string Small = Path.Combine(Repository.Root, "tests", "Spoolbook.Acceptance", "school");

    readonly Bench _bench = new();

    public SchoolBench() => _bench.CopyOf(Small, "school");

    public string School => _bench.PathOf("school");

    public string Shipments => Path.Combine(School, ShipmentRecords.UsualFolder);

    public (int Status, string Out, string Error) Run(params string[] args) => _bench.Run(args);

    public (int Status, string Out, string Error) Answer(string lines, params string[] args) => _bench.Answer(lines, args);

    /// <summary>Ships on a Friday.</summary>
    public (int Status, string Out, string Error) Ship(params string[] more) =>
        _bench.Run(["ship", "school", "--sent", "2026-10-16", .. more]);

    public string Text(string file) => File.ReadAllText(Path.Combine(School, file));

    public void Rewrite(string file, string old, string text)
    {
        Assert.Contains(old, Text(file), StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(School, file), Text(file).Replace(old, text, StringComparison.Ordinal));
    }

    public void Dispose() => _bench.Dispose();
}
