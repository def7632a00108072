using Spoolbook.Papers.Jobs;
using Spoolbook.Papers.Web;

namespace Spoolbook.Papers.PocketLogs;

/// <summary>
/// A page to log on with a telephone on the set, without a network. It hands over lines of the short form, which the
/// record takes in.
/// </summary>
internal sealed class PocketLogPaper : IPaper
{
    const string Name = "pocket-log";

    public IEnumerable<PaperJob> Jobs(PaperSource source)
    {
        yield return new PaperJob(Name, Name + ".html", source.Words["pocket-log"], _ => new PocketLogFacts(source.Head))
        {
            Printed = false,
            LinkedFrom = LinkPlace.Nowhere,
            Program = new ScreenProgram(Name, () => PocketData.Write(source.Books, source.Format)),
        };
    }
}
