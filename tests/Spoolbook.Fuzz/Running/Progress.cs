using System.Text.Json;

namespace Spoolbook.Fuzz.Running;

/// <summary>How far a target came, over all the times that it was started.</summary>
internal sealed record Progress
{
    static readonly JsonSerializerOptions _options = new() { WriteIndented = true };

    /// <summary>All inputs are drawn from this number and the count of executions.</summary>
    public int Seed { get; init; } = 1;

    public long Executions { get; set; }

    public double Seconds { get; set; }

    public int Edges { get; set; }

    public int Outcomes { get; set; }

    public int Inputs { get; set; }

    /// <summary>The progress in a file; a new one where there is none, or a kill cut it off.</summary>
    public static Progress Read(string path)
    {
        try
        {
            return File.Exists(path) ? JsonSerializer.Deserialize<Progress>(File.ReadAllText(path)) ?? new Progress() : new Progress();
        }
        catch (JsonException)
        {
            return new Progress();
        }
    }

    public void Write(string path)
    {
        File.WriteAllText(path + ".new", JsonSerializer.Serialize(this, _options));
        File.Move(path + ".new", path, overwrite: true);
    }
}
