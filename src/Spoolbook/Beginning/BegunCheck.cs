using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Beginning;

/// <summary>Holds each answer against the whole of reading and checking, so that what is written checks clean.</summary>
internal static class BegunCheck
{
    /// <summary>The answers with one more, or what a check says about it.</summary>
    public static Answered<NewAnswers> Take(NewQuestion question, NewAnswers answers, string text)
    {
        var answer = question.Take(answers, text);
        if (answer.Value is not { } more || Findings(more) is not { Count: > 0 } wrong)
        {
            return answer;
        }

        // What an earlier production brings along is none of this answer's.
        var known = Findings(answers).Select(f => (f.Check, f.Message)).ToHashSet();
        return wrong.Find(f => !known.Contains((f.Check, f.Message))) is { } first ? Answered<NewAnswers>.Not(Said(first)) : answer;
    }

    /// <summary>The first error; null where there is none.</summary>
    public static Finding? FirstError(NewAnswers answers) => Findings(answers).FirstOrDefault(f => f.Level == Level.Error);

    /// <summary>A finding in one line: what is wrong, and what to write.</summary>
    public static string Said(Finding wrong) => $"{wrong.Message.TrimEnd('.')}. {wrong.Help}".TrimEnd();

    static List<Finding> Findings(NewAnswers answers) =>
        [.. Pipeline.Run(new BegunFiles(BegunProduction.FilesOf(answers))).Found.Findings.Where(f => f.Level != Level.Note)];
}
