using System.Collections.Immutable;
using Spoolbook.Checks.Running;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Checks.Exposures;

static class NoSuchIndex
{
    public static readonly RecordCheck Check = new("exposure/no-such-index", Level.Warning, Look);

    // The arithmetic scale of film speeds in thirds of a stop, as in ISO 5800, from memory.
    static readonly ImmutableArray<int> Scale =
    [
        .. (int[])[3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 32, 40, 50, 64, 80],
        .. (int[])[100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000, 1250, 1600, 2000, 2500, 3200],
    ];

    static IEnumerable<Finding> Look(Context context) =>
        from written in context
            .Production.Lots.Select(l => (Roll: (Roll?)null, Take: (Take?)null, Index: (Located<int>?)l.Index))
            .Concat(context.Production.Rolls.Select(r => (Roll: (Roll?)r, Take: (Take?)null, Index: r.Rated)))
            .Concat(context.Production.Rolls.SelectMany(r => r.Takes.Select(t => (Roll: (Roll?)r, Take: (Take?)t, Index: t.Rated))))
        where written.Index is not null && !Scale.Contains(written.Index.Value)
        let message = Sentence.Of("exposure/no-such-index.message", ("index", Context.Number(written.Index.Value)))
        let finding = Check.At(written.Index.Place, message)
        select finding with
        {
            Roll = written.Roll?.Name.Value,
            Take = written.Take?.Slate,
            Advice = Sentence.Of("exposure/no-such-index.help", ("near", Context.Number(Nearest(written.Index.Value)))),
        };

    static int Nearest(int index) => Scale.MinBy(i => Math.Abs(Math.Log((double)i / Math.Max(1, index))));
}
