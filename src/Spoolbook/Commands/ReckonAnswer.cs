using Spoolbook.Film;
using Spoolbook.Film.Reckonings;
using Spoolbook.Shoot.Findings;

namespace Spoolbook.Commands;

/// <summary>A sum worked out, or what is wrong with the question.</summary>
/// <param name="Reckoning">Null where there is an objection.</param>
/// <param name="Objection">What does not fit together, and what to give instead; empty where nothing is wrong.</param>
internal readonly record struct ReckonAnswer(Reckoning? Reckoning, string Objection)
{
    public static ReckonAnswer Of(Reckoning reckoning) => new(reckoning, "");

    public static ReckonAnswer Not(string objection) => new(null, objection);

    public static ReckonAnswer Not(Slip slip) => Not(SlipSentences.Of(slip).Whole.ToString());
}
