using System.Collections.Immutable;
using Spoolbook.Film;

namespace Spoolbook.Papers.PocketLogs;

/// <summary>The stops that a lens can be set to, to choose from with a thumb.</summary>
internal static class LensRing
{
    const double Hair = 1e-6;

    static readonly (double Over, StopStep Step)[] _steps =
    [
        (0, StopStep.Third),
        (1.0 / 3, StopStep.Third),
        (0.5, StopStep.Half),
        (2.0 / 3, StopStep.Third),
    ];

    /// <summary>
    /// A row for each full stop: itself, a third, a half and two thirds down; null where the ring does not go. A widest
    /// stop between two full ones has the place of the full one.
    /// </summary>
    public static ImmutableArray<ImmutableArray<string?>> Rows(Stop widest, Stop smallest)
    {
        var first = (int)Math.Floor(widest.Av + Hair);
        var last = (int)Math.Floor(smallest.Av + Hair);
        return
        [
            .. Enumerable
                .Range(first, Math.Max(0, last - first + 1))
                .Select(full =>
                    _steps
                        .Select(
                            (step, i) =>
                            {
                                var av = full + step.Over;
                                return av > smallest.Av + Hair ? null
                                    : av >= widest.Av - Hair ? new Stop(av, widest.Mark).ToText(step.Step)
                                    : i == 0 ? widest.ToString()
                                    : null;
                            }
                        )
                        .ToImmutableArray()
                ),
        ];
    }
}
