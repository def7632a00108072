namespace Spoolbook.Film.Exposures;

/// <summary>The constants that meters are calibrated with. Sources disagree by up to 0.6 of a stop: say which one is used.</summary>
public static class MeterConstants
{
    /// <summary>K, 12.5 cd s/m²: ANSI PH3.49-1971 and three makers (GNU units).</summary>
    public const double K = 12.5;

    /// <summary>K, 11.4 cd s/m²: ASA PH2.12-1961 (GNU units).</summary>
    public const double K1961 = 11.4;

    /// <summary>K, 14 cd s/m²: two makers (GNU units).</summary>
    public const double KHigh = 14;

    /// <summary>C, 250 lx s: a flat receptor, two makers (GNU units).</summary>
    public const double CFlat = 250;

    /// <summary>C, 224 lx s, 20.83 footcandles: ASA PH2.12-1961 (GNU units).</summary>
    public const double C1961 = 224;

    /// <summary>C, 322 lx s, 30 ± 5 footcandles: ANSI PH3.49-1971, the mean (GNU units).</summary>
    public const double C1971 = 322;

    /// <summary>
    /// C, 25 footcandle seconds (269 lx s): used by motion picture tables. Eastman Kodak's for an EI 500 stock (TI2082,
    /// 1993) imply 24.6.
    /// </summary>
    public const double CCine = 25 * MeterLaw.LuxInFootcandle;
}
