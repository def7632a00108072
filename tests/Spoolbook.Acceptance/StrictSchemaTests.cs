using System.Diagnostics;

namespace Spoolbook.Acceptance;

/// <summary>The schemas before a strict outside judge, who takes no word that is not JSON Schema's, and no type left open.</summary>
public sealed class StrictSchemaTests : IDisposable
{
    const string Ajv = "npm:ajv/dist/2020.js";

    // The one word beside the standard's is the message that editors show.
    const string Judge = """
        const Ajv = require('ajv/dist/2020');
        const judge = new Ajv({ strict: true, allErrors: true });
        require('ajv-errors')(judge);
        judge.compile(JSON.parse(require('fs').readFileSync(0, 'utf8')));
        """;

    readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [ToolTheory(Ajv)]
    [MemberData(nameof(PublishedSchemaTests.Kinds), MemberType = typeof(PublishedSchemaTests))]
    public void A_strict_judge_takes_the_schema(string kind)
    {
        var start = new ProcessStartInfo("node", ["-e", Judge]) { RedirectStandardInput = true, RedirectStandardError = true };
        start.Environment["NODE_PATH"] = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Tools.FileOfPackage(Ajv)!)!, "..", ".."));
        using var process = Process.Start(start)!;
        process.StandardInput.Write(_bench.Run("schema", kind).Out);
        process.StandardInput.Close();
        var said = process.StandardError.ReadToEnd();
        process.WaitForExit();

        Assert.True(process.ExitCode == 0, said);
    }
}
