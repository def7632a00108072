namespace Spoolbook;

/// <summary>Which Spoolbook this is.</summary>
internal static class ProgramVersion
{
    /// <summary>The version, as in Directory.Build.props.</summary>
    public static string Text { get; } = typeof(ProgramVersion).Assembly.GetName().Version?.ToString(3) ?? "0.0.0";
}
