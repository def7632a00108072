using System.Collections.Immutable;
using Spoolbook.Shoot.Findings;
using Spoolbook.Shoot.Records;

namespace Spoolbook.Reading;

/// <summary>
/// Findings as reading brings them. The same finding about the same characters is kept once: an alias shows one mistake many times.
/// </summary>
sealed class FindingList
{
    readonly List<Finding> _findings = [];
    readonly HashSet<(string Check, Place Place, Sentence Message)> _seen = [];

    /// <summary>The roll being read, for findings about it.</summary>
    public string? Roll { get; set; }

    /// <summary>Whether what is being read stands beside the roll's log, so that its faults keep no check from the roll.</summary>
    public bool SparesRoll { get; set; }

    public int Count => _findings.Count;

    public void Add(Finding finding)
    {
        if (_seen.Add((finding.Check, finding.Place, finding.Description)))
        {
            _findings.Add(finding);
        }
    }

    public void Add(string check, Sentence message, Place place, Sentence help, params (Place Place, Sentence Message)[] others)
    {
        if (_seen.Add((check, place, message)))
        {
            _findings.Add(
                new Finding(check, Level.Error, message, place)
                {
                    Advice = help,
                    Roll = Roll,
                    SparesRoll = SparesRoll,
                    Others = [.. others.Select(o => new Related(o.Place, o.Message))],
                }
            );
        }
    }

    public ImmutableArray<Finding> InOrder() => FindingOrder.Sort(_findings);
}
