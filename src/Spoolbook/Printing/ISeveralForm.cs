namespace Spoolbook.Printing;

/// <summary>How the findings of several productions are printed: a document's beginning, a part for each, its end.</summary>
internal interface ISeveralForm
{
    /// <summary>Before the first production; empty for nothing.</summary>
    string Head { get; }

    /// <summary>Between two productions.</summary>
    string Between { get; }

    /// <summary>A production's part, made beside others at the same time.</summary>
    /// <param name="around">What it is made in: width and colour.</param>
    string Part(string name, CheckedProduction found, ProductionDone done, CommandEnvironment around);

    /// <summary>After the last production.</summary>
    string Tail(SeveralSum sum, CommandEnvironment around);
}
