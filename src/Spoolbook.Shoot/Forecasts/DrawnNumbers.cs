using System.Numerics;

namespace Spoolbook.Shoot.Forecasts;

/// <summary>
/// Random numbers from a fixed seed, the same on every machine and in every version: PCG32, the XSH RR form with 64
/// bits of state (M. E. O'Neill, PCG: A Family of Simple Fast Space-Efficient Statistically Good Algorithms for Random
/// Number Generation, Harvey Mudd College HMC-CS-2014-0905, 2014).
/// </summary>
public sealed class DrawnNumbers
{
    const ulong Multiplier = 6364136223846793005;

    readonly ulong _increment;
    ulong _state;

    /// <summary>The numbers of a seed. Streams of one seed are independent.</summary>
    public DrawnNumbers(ulong seed, ulong stream)
    {
        _increment = (stream << 1) | 1;
        Next();
        unchecked
        {
            _state += seed;
        }

        Next();
    }

    /// <summary>The next 32 bits.</summary>
    public uint Next()
    {
        unchecked
        {
            var old = _state;
            _state = (old * Multiplier) + _increment;
            return BitOperations.RotateRight((uint)(((old >> 18) ^ old) >> 27), (int)(old >> 59));
        }
    }

    /// <summary>A whole number from 0 to just below <paramref name="bound"/>, each as likely as the others.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The bound is not above zero.</exception>
    public int Below(int bound)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(bound);

        // Draws that would favour the low numbers are rejected.
        var most = uint.MaxValue - (uint.MaxValue % (uint)bound);
        uint drawn;
        do
        {
            drawn = Next();
        } while (drawn >= most);

        return (int)(drawn % (uint)bound);
    }

    /// <summary>A fraction: above 0 and below 1, in steps of 2^-32.</summary>
    public double Part() => (Next() + 0.5) / 4294967296.0;

    /// <summary>
    /// A number of the normal distribution with mean 0 and variance 1 (G. E. P. Box and M. E. Muller, A Note on the Generation of Random
    /// Normal Deviates, 1958).
    /// </summary>
    public double Normal() => Math.Sqrt(-2 * Math.Log(Part())) * Math.Cos(2 * Math.PI * Part());

    /// <summary>
    /// A number of the chi-square distribution: the sum of the squares of so many normal numbers; each pair of them is
    /// twice an exponential number.
    /// </summary>
    /// <param name="degrees">Degrees of freedom, from 1.</param>
    public double ChiSquare(int degrees)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(degrees);
        var sum = degrees % 2 == 0 ? 0 : Math.Pow(Normal(), 2);
        for (var pair = 0; pair < degrees / 2; pair++)
        {
            sum -= 2 * Math.Log(Part());
        }

        return sum;
    }
}
