using Spoolbook.Printing;

namespace Spoolbook.Beginning;

/// <summary>Asks what was not given, a line each.</summary>
internal sealed class NewInterview(CommandEnvironment around)
{
    readonly Ink _ink = new(around.Colour);
    bool _isOver;

    /// <summary>The answers with what was asked; null, with the reason said, where an answer of redirected input is wrong.</summary>
    /// <param name="given">Options that were given, which are not asked.</param>
    public NewAnswers? Ask(NewAnswers answers, IReadOnlySet<string> given)
    {
        around.Out.WriteLine(_ink.Dim("Enter takes what is in brackets, or leaves it open. Nothing is written until the end."));
        foreach (var question in NewQuestions.All)
        {
            if (given.Contains(question.Option) || answers.From?.Has(question.Key) == true)
            {
                continue;
            }

            if (Ask(answers, question) is not { } more)
            {
                return null;
            }

            answers = more;
        }

        around.Out.WriteLine();
        return answers;
    }

    NewAnswers? Ask(NewAnswers answers, NewQuestion question)
    {
        if (question.Example.Length > 0 && !_isOver)
        {
            around.Out.WriteLine(_ink.Dim($"  as in: {question.Example}"));
        }

        var count = 1;
        while (true)
        {
            var usual = question.Usual(answers);
            var line = Read(question.IsList && count > 1 ? "  and" : question.Prompt, usual);
            var text = string.IsNullOrWhiteSpace(line) ? usual : line.Trim();
            if (text.Length == 0)
            {
                return answers;
            }

            var (more, objection) = BegunCheck.Take(question, answers, text);
            if (more is not null)
            {
                answers = more;
                count++;
                if (!question.IsList)
                {
                    return answers;
                }
            }
            else if (around.AsksAgain && !_isOver)
            {
                around.Out.WriteLine($"  {_ink.Yellow(Plain.Text(objection))}");
            }
            else
            {
                around.Out.WriteLine();
                around.Error.WriteLine($"spoolbook: {question.Prompt}: {Plain.Escaped(objection)}");
                return null;
            }
        }
    }

    string? Read(string prompt, string usual)
    {
        if (_isOver)
        {
            return null;
        }

        around.Out.Write($"{_ink.Bold(prompt)}{(usual.Length > 0 ? $" [{Plain.Text(usual)}]" : "")}: ");
        around.Out.Flush();
        var line = around.In.ReadLine();
        _isOver = line is null;
        if (line is null || !around.AsksAgain)
        {
            // Nobody's Enter has ended the line.
            around.Out.WriteLine(line is null ? "" : Plain.Text(line));
        }

        return line;
    }
}
