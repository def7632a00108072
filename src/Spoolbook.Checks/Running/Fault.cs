using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Running;

/// <summary>A check of ours that broke. The sheet is not to blame.</summary>
public static class Fault
{
    /// <summary>The name it is reported under.</summary>
    public const string Name = "spoolbook/fault";

    internal static readonly StageCheck Listed = new(Name, Level.Error, Round.Breaking);

    /// <summary>A step of the whole way that broke, so that what comes after it was not done.</summary>
    /// <param name="doing">What was being done: "reading".</param>
    public static Finding OfStep(string doing, Place place, Exception e) =>
        new(Name, Level.Error, Sentence.Of("spoolbook/fault.message.step", ("doing", doing)), place)
        {
            Figures = [new Figure(Sentence.Of("spoolbook/fault.figure.what-broke"), e.GetType().Name)],
            Advice = Sentence.Of("spoolbook/fault.help.step"),
        };

    internal static Finding Of(Check check, Place place, Roll? roll, Exception e) =>
        new(Name, Level.Error, Sentence.Of("spoolbook/fault.message", ("check", check.Name)), place)
        {
            Roll = roll?.Name.Value,
            Figures = [new Figure(Sentence.Of("spoolbook/fault.figure.what-broke"), e.GetType().Name)],
            Advice = Sentence.Of("spoolbook/fault.help"),
        };
}
