using System.Collections.Immutable;
using System.Text.Json;
using Spoolbook.Checks.Running;
using Spoolbook.Entry;
using Spoolbook.Importing;
using Spoolbook.Logging;
using Spoolbook.Shoot.Accounts;

namespace Spoolbook.Printing;

/// <summary>What came of lines, for programs.</summary>
internal static class LogJson
{
    public static string Write(ImmutableArray<LineAnswer> answers, ImmutableArray<ChangedFile> files, bool dryRun) =>
        JsonText.Object(json =>
        {
            var isWell = answers.All(a => a.IsWell);
            json.WriteNumber("spoolbook", 1);
            json.WriteBoolean("well", isWell);
            json.WriteBoolean("dry-run", dryRun);
            json.WriteBoolean("written", isWell && !dryRun);
            json.Objects("lines", answers, Write);
            json.Objects("files", isWell ? files : [], (j, file) =>
            {
                j.WriteString("file", file.Name);
                j.WriteString("difference", string.Concat(UnifiedDiff.Write(file).Select(line => line + "\n")));
            });
        });

    static void Write(Utf8JsonWriter json, LineAnswer answer)
    {
        json.WriteString("file", answer.Text.File);
        json.WriteNumber("line", answer.Text.Line);
        json.WriteString("text", answer.Text.Text);
        json.WriteString("result", answer.IsWell ? answer.Change!.Deed.ToString().ToLowerInvariant() : "refused");
        if (answer.Said?.Number is { } number)
        {
            json.WriteString("number", number);
        }

        if (answer is { IsWell: true, Change.Remark: { } remark })
        {
            json.Object("note", j =>
            {
                j.WriteString("was", remark.Was);
                j.WriteString("now", remark.Now);
            });
        }

        if (answer.Unread is { } unread)
        {
            json.Object("refused", j => FindingJson.Write(j, unread, null));
        }
        else if (answer.Objection is { } objection)
        {
            json.Object("refused", j =>
            {
                j.WriteString("where", objection.Where);
                j.WriteString("message", objection.Message);
                j.WriteString("help", objection.Help);
            });
        }

        json.Objects("findings", answer.Worse, (j, finding) => FindingJson.Write(j, finding, null));
        if (answer is { IsWell: true, Roll: { } roll, Production: { } production })
        {
            json.Object("roll", j => Write(j, roll, new Context(production)));
        }
    }

    static void Write(Utf8JsonWriter json, RollInCamera roll, Context context)
    {
        json.WriteString("name", roll.Book.Roll.Name.Value);
        json.WriteBoolean("out", roll.Book.Roll.Unload is not null);
        if (roll.At is { } at)
        {
            json.WriteString("at", context.Write(at));
        }

        json.WriteNumber("pass", roll.Pass);
        if (roll.ExposedTo is { } exposed)
        {
            json.WriteString("exposed-to", context.Write(exposed));
        }

        json.WriteString("left", context.Write(roll.Left));
        json.WriteString("speed", roll.Speed.FramesPerSecond.ToShortText(3));
        json.WriteString("seconds", roll.Seconds.ToText(2));
        if (roll.SpringLeft is { } spring)
        {
            json.WriteString("spring", context.Write(spring));
        }
    }
}
