namespace Spoolbook.Shoot.Records;

/// <summary>How serious a finding is, in SARIF's words, from least to most.</summary>
public enum Level
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Probably a mistake, or costly.</summary>
    Warning,

    /// <summary>Wrong: no paper goes out with it.</summary>
    Error,
}
