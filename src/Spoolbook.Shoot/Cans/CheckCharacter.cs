namespace Spoolbook.Shoot.Cans;

/// <summary>
/// The check character of ISO/IEC 7064, system MOD 37,36: one letter or digit that catches every single wrong character
/// and nearly every swap of two neighbours. Other codes that are read aloud and written by hand use it too: the numbers
/// of audiovisual works (ISO 15706) and of releases of recordings.
/// </summary>
public static class CheckCharacter
{
    const string Characters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    /// <summary>The check character of a code. Small letters count as capitals; anything but A to Z and 0 to 9 is ignored.</summary>
    /// <returns>One of the 36 characters; <c>1</c> for a code without any of them.</returns>
    public static char Compute(string code)
    {
        // Recursion of the hybrid systems: P(1) = 36; S = P + a; P = 2 (S mod 36, or 36 for none) mod 37; check = 37 - P.
        var product = Characters.Length;
        foreach (var character in code)
        {
            if (Characters.IndexOf(char.ToUpperInvariant(character), StringComparison.Ordinal) is >= 0 and var value)
            {
                var sum = (product + value) % Characters.Length;
                product = 2 * (sum == 0 ? Characters.Length : sum) % (Characters.Length + 1);
            }
        }

        return Characters[(Characters.Length + 1 - product) % Characters.Length];
    }

    /// <summary>Whether a code ends with its own check character.</summary>
    public static bool Holds(string code) => code.Length > 0 && Compute(code[..^1]) == char.ToUpperInvariant(code[^1]);
}
