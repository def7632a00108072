namespace Spoolbook.Printing;

/// <summary>For a code host: a command for each finding of each production, as for one.</summary>
internal sealed class SeveralCommands : ISeveralForm
{
    public string Head => "";

    public string Between => "";

    public string Part(string name, CheckedProduction found, ProductionDone done, CommandEnvironment around) =>
        string.Concat(FindingCommands.Lines(found, SarifPaths.For(name, around.Folder)).Select(line => line + "\n"));

    public string Tail(SeveralSum sum, CommandEnvironment around) => "";
}
