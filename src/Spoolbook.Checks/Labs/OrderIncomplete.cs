using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Labs;

static class OrderIncomplete
{
    // The shortest telephone number that anybody writes: 555-0163.
    const int DigitsOfATelephone = 5;
    const string Scanning = "scan";

    public static readonly RecordCheck Check = new("lab/order-incomplete", Level.Note, Look);

    // Before anything is on its way, somebody may still be filling it in.
    static IEnumerable<Finding> Look(Context context)
    {
        var (lab, rolls) = (context.Production.Lab, context.Production.Rolls.Where(r => r.GoesToLab).ToArray());
        return lab is null || (lab.Consignments.IsEmpty && rolls.All(r => r.Lab?.SentOn is null))
            ? []
            : Missing(lab, rolls).Select(m => Check.At(lab.Place, m.Says) with { Advice = m.Help });
    }

    static IEnumerable<(Sentence Says, Sentence Help)> Missing(Lab lab, Roll[] rolls)
    {
        if (lab.InDoubt.IsEmpty)
        {
            yield return (Sentence.Of("lab/order-incomplete.message.in-doubt"), Sentence.Of("lab/order-incomplete.help.in-doubt"));
        }
        else if (!lab.InDoubt.Any(IsTelephone))
        {
            yield return (Sentence.Of("lab/order-incomplete.message.telephone"), Sentence.Of("lab/order-incomplete.help.telephone"));
        }

        var services = lab.Services.Concat(rolls.SelectMany(r => r.Lab?.Services ?? [])).Select(s => s.Value).ToArray();
        var words = lab.Agreed.Concat(rolls.Select(r => r.Lab?.Notes).OfType<Located<string>>()).Select(n => n.Value).ToArray();
        if (services.Length == 0 && words.Length == 0)
        {
            yield return (Sentence.Of("lab/order-incomplete.message.work"), Sentence.Of("lab/order-incomplete.help.work"));
        }

        if (
            lab.Deliver is null
            && services.Contains(Scanning, StringComparer.OrdinalIgnoreCase)
            && !words.Any(w => w.Contains(Scanning, StringComparison.OrdinalIgnoreCase))
        )
        {
            yield return (Sentence.Of("lab/order-incomplete.message.scan"), Sentence.Of("lab/order-incomplete.help.scan"));
        }

        if (lab.NeededBy is null)
        {
            yield return (Sentence.Of("lab/order-incomplete.message.needed-by"), Sentence.Of("lab/order-incomplete.help.needed-by"));
        }
    }

    static bool IsTelephone(Located<string> line) => line.Value.Count(char.IsAsciiDigit) >= DigitsOfATelephone;
}
