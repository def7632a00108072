namespace Spoolbook.Printing;

/// <summary>For editors and code hosts: one log with a run for each production.</summary>
internal sealed class SeveralSarif : ISeveralForm
{
    public string Head => FindingSarif.Head + "\n";

    public string Between => ",\n";

    public string Part(string name, CheckedProduction found, ProductionDone done, CommandEnvironment around) =>
        FindingSarif.Run(found, SarifPaths.For(name, around.Folder), name);

    public string Tail(SeveralSum sum, CommandEnvironment around) => "\n  ]\n}\n";
}
