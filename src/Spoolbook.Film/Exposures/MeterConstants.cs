namespace Spoolbook.Film.Exposures;

/// <summary>The constants that meters are calibrated with. Sources disagree by up to 0.6 of a stop: say which one is used.</summary>
public static class MeterConstants
{
    /// <summary>K, 12.5 cd s/m²: ANSI PH3.49-1971 and three makers (GNU units).</summary>
    public const double K = 12.5;

    /// <summary>
    /// C, 25 footcandle seconds (269 lx s): used by motion picture tables. Eastman Kodak's for an EI 500 stock (TI2082,
    /// 1993) imply 24.6.
    /// </summary>
    public const double CCine = 25 * MeterLaw.LuxInFootcandle;
}
