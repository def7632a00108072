using System.Text;
using Spoolbook.Entry.Lines;
using Spoolbook.Fuzz.Mutations;
using Spoolbook.Logging;
using Spoolbook.Printing;
using Spoolbook.Reading.Editing;
using Spoolbook.Reading.Files;

namespace Spoolbook.Fuzz.Targets;

/// <summary>
/// Lines of the short form, as <c>log</c> takes them: into a production in memory with a roll in the camera, one after the other. What a
/// line says is written as a line again, and must say the same.
/// </summary>
internal sealed class LinesTarget : ITarget
{
    const int MostLines = 12,
        Narrow = 40;

    // R01 of the small shoot, still in the camera and not run off.
    static readonly TextFiles _files = SmallShoot.With(
        SmallShoot.Text[..SmallShoot.Text.IndexOf("      - run-off", StringComparison.Ordinal)]
    );

    public string Name => "lines";

    public IReadOnlyList<MutationKind> Grammar => [.. LineKinds.All, .. FormKinds.All, .. SaidKinds.All];

    public IEnumerable<string> Run(byte[] input)
    {
        using var output = new StringWriter { NewLine = "\n" };
        var around = Printing.Around(output, false, Narrow) with { Now = () => new DateTime(2026, 10, 4, 12, 0, 0) };
        var session = LogSession.Of(_files, new LogSettings("shoot", false, false, false), null, false, around);
        var printer = new LogPrinter(around, true);
        var (came, answers) = (new HashSet<string>(), new List<LineAnswer>());
        foreach (var (at, line) in Encoding.UTF8.GetString(input).Split('\n').Take(MostLines).Index())
        {
            var before = session.Context;
            if (session.Say(new LineText("lines.txt", at + 1, line)) is not { } answer)
            {
                continue;
            }

            answers.Add(answer);
            printer.Print(answer);
            if (answer.Said is { } said)
            {
                ReadBack(said, before);
                came.Add($"{said.Verb} {answer.Change?.Deed} {answer.Objection is null} {answer.IsAgainstTheRecord}");
            }

            came.UnionWith(answer.Worse.Append(answer.Unread).OfType<Shoot.Findings.Finding>().Select(f => f.Check));
        }

        printer.PrintEnd([.. answers], session.Files, true);
        if (output.ToString().Any(c => char.IsControl(c) && c != '\n'))
        {
            throw new BrokenPromiseException("The terminal gets a control character");
        }

        Printing.Read(LogJson.Write([.. answers], session.Files, true), "JSON");
        return came;
    }

    static void ReadBack(SaidLine said, LineContext before)
    {
        if (said.Verb is LineVerb.Amend or LineVerb.Strike or LineVerb.Day)
        {
            return;
        }

        var line = LineWriter.Write(said.Verb, said.Roll, said.Keys, before);
        var again = LineReader.Read(line, "again.txt", 1, before);
        if (again.Said is not { } read)
        {
            throw new BrokenPromiseException($"A line that is written and not read: {again.Refused?.Check}");
        }

        if (Text(read.Keys) != Text(said.Keys))
        {
            throw new BrokenPromiseException("A line that is written and says something else");
        }
    }

    static string Text(IEnumerable<KeyValue> keys) =>
        string.Join('\n', keys.Where(k => !k.Values.IsEmpty).Select(k => $"{k.Key}: {string.Join('|', k.Values)}"));
}
